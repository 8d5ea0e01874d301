/**
 * Vectors, quaternions, matrices, smooth tables and roots. Nothing here knows about gliders. What the flight loop calls
 * works on primitive fields and arrays and allocates nothing.
 */
package org.sawfly.math;
