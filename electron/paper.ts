/** Mebibytes of a paper the viewer is handed; a bundle of a whole order with photographs is far below. */
const maxMegabytes = 50;
const maxBytes = maxMegabytes * 1024 * 1024;
const maxNameLength = 120;
/** File systems hold 255 bytes; letters outside ASCII take two to four each. */
const maxNameBytes = 240;

const forbidden = /[\\/:*?"<>|\p{C}\p{Zl}\p{Zp}]/u;
/** Windows opens a device for these, whatever the extension. */
const windowsDevice = /^(con|prn|aux|nul|com\d|lpt\d)\./i;
const pdfStart = [...'%PDF-'].map((letter) => letter.charCodeAt(0));

export interface Paper {
  name: string;
  bytes: Uint8Array;
}

export type PaperCheck = { ok: true; paper: Paper } | { ok: false; message: string };

function isPaperName(name: unknown): name is string {
  return (
    typeof name === 'string' &&
    name.length <= maxNameLength &&
    Buffer.byteLength(name) <= maxNameBytes &&
    /[^.\s].*\.pdf$/i.test(name) &&
    !/^[.\s]/.test(name) &&
    !forbidden.test(name) &&
    !windowsDevice.test(name)
  );
}

/** Decides whether what the page sent is a PDF under a plain file name. */
export function checkPaper(name: unknown, bytes: unknown): PaperCheck {
  if (!isPaperName(name)) {
    return {
      ok: false,
      message: `Give the paper a plain file name that ends in .pdf, at most ${maxNameLength} characters.`,
    };
  }
  if (!(bytes instanceof ArrayBuffer)) {
    return { ok: false, message: 'This is not a PDF: make the paper again.' };
  }
  if (bytes.byteLength > maxBytes) {
    return {
      ok: false,
      message: `The paper is over ${maxMegabytes} MB: save it and open it yourself.`,
    };
  }
  const content = new Uint8Array(bytes);
  if (!pdfStart.every((code, at) => content[at] === code)) {
    return { ok: false, message: 'This is not a PDF: make the paper again.' };
  }
  return { ok: true, paper: { name, bytes: content } };
}
