/** A style sheet as text: the build makes such a module beside each, without what a browser does not need. */
declare module '*.css.js' {
  export const css: string;
}
