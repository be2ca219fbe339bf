/** What became of a paper handed to the system viewer. The message says what to do. */
export type OpenPdfResult = { ok: true } | { ok: false; message: string };

/** What the window program offers the page. Missing in a browser. */
export interface TillermarkDesktop {
  /**
   * Opens a paper in the system viewer.
   * @param name File name only, ending in .pdf, at most 120 characters.
   * @param bytes The whole PDF, at most 50 MB.
   */
  openPdf(name: string, bytes: ArrayBuffer): Promise<OpenPdfResult>;
  /** Asks for a folder. `null` where the person chose none. */
  chooseFolder(): Promise<string | null>;
}

/** The name of {@link TillermarkDesktop} on the page's `window`. */
export const desktopGlobal = 'tillermarkDesktop';

/** Scheme and host of the page in the window program. */
export const desktopOrigin = 'tillermark://app';

/** Window messages between the page and its preload. The port rides on the second one. */
export const corePortPleaseMessage = 'tillermark:core-port-please';
export const corePortMessage = 'tillermark:core-port';

/** Channels between the preload and the main process. */
export const desktopChannels = {
  corePortPlease: 'core-port-please',
  corePort: 'core-port',
  openPdf: 'open-pdf',
  chooseFolder: 'choose-folder',
} as const;

export type DesktopChannel = (typeof desktopChannels)[keyof typeof desktopChannels];
