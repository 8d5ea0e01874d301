/**
 * Reading and writing files. A file is walked once into a tree whose nodes know their line and column; readers ask it for
 * keys, collect every problem and turn units into SI. The only package that reads, writes, or knows the parser.
 */
package org.sawfly.file;
