/**
 * The commands, one class each. Progress and findings go to standard error, results to standard output; exit
 * status 0 is done, 1 findings that stop the build, 2 wrong use.
 */
package understorey.cli;
