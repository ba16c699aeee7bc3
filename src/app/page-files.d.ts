/// <reference types="vite-plugin-pwa/client" />

/** Style sheets are taken into the page by importing them. */
declare module '*.css';

/** Files that the page serves beside itself, by their address. */
declare module '*.ttf' {
  const address: string;
  // biome-ignore lint/style/noDefaultExport: this is how Vite hands the address over.
  export default address;
}
