/** Vite's way of taking a file into the program as text. */
declare module '*?raw' {
  const text: string;
  // biome-ignore lint/style/noDefaultExport: this is how Vite hands the text over.
  export default text;
}
