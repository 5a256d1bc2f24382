/** Files that the library may not fetch itself; who calls it hands them in. */
export interface Assets {
  /** Noto Sans as WOFF, for PDF. */
  readonly fonts: { readonly regular: Uint8Array; readonly bold: Uint8Array };
  /** Scripts of the pages, bundled: `client` shows a scene, `bench` holds the library and this very design. */
  readonly pages: { readonly client: string; readonly bench: string };
}

export type AssetName = keyof Assets;
