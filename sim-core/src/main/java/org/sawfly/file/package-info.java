/**
 * The boundary where files become values: strict YAML trees whose nodes know their place, readers that collect every
 * problem, and the schemas the same readers describe. Start at {@link org.sawfly.file.In}. Values in files carry their
 * unit in the key; everything handed on is SI and radians. The only package that knows Jackson.
 */
package org.sawfly.file;
