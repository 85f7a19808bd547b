/** A data file as text, put in place when the program is built. */
declare module '*?raw' {
  const text: string;
  export default text;
}
