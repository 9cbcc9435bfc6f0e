/**
 * The commands, one annotated class each. Progress and findings go to standard error, results to standard output. Exit
 * status: 0 done, 1 errors that stop the build, 2 wrong command line. Start at {@code Understorey}; everything that
 * is printed goes through {@code Terminal}.
 */
@NullMarked
package understorey.cli;

import org.jspecify.annotations.NullMarked;
