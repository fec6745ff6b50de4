/**
 * A design spread over the machines of an Apache Spark cluster. Built under the Maven profile
 * {@code spark} only; start with {@link org.undercap.cli.spark.BatchJob}.
 */
package org.undercap.cli.spark;
