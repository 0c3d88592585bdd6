/**
 * The worktable: a web app on this machine alone, in the order of the job. {@link trueseam.worktable.Worktable} starts the server; each
 * screen is a package of its own ({@code person}, {@code pattern}, {@code chart}, ...), with a template folder and files of style and
 * script of the same name. All computing is the engine's: a screen asks, shows and keeps what was typed.
 */
package trueseam.worktable;
