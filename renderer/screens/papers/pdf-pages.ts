import workerUrl from 'pdfjs-dist/build/pdf.worker.min.mjs?url';

/** A page drawn on a canvas, with its words for whoever cannot see it. */
export interface DrawnPage {
  number: number;
  canvas: HTMLCanvasElement;
  words: string;
}

/** Pixels across a page on a plain screen; doubled where the screen is finer. */
const pageWidthPx = 760;

/**
 * Draws a PDF page by page. The library is fetched when a paper is looked at for the first time.
 * @throws DOMException named AbortError once the signal aborts.
 */
export async function* drawPages(file: Blob, signal: AbortSignal): AsyncGenerator<DrawnPage> {
  const pdfjs = await import('pdfjs-dist');
  pdfjs.GlobalWorkerOptions.workerSrc = workerUrl;
  const loading = pdfjs.getDocument({ data: new Uint8Array(await file.arrayBuffer()) });
  try {
    const pdf = await loading.promise;
    for (let number = 1; number <= pdf.numPages; number += 1) {
      signal.throwIfAborted();
      const page = await pdf.getPage(number);
      const scale =
        (pageWidthPx * Math.max(devicePixelRatio, 1)) / page.getViewport({ scale: 1 }).width;
      const viewport = page.getViewport({ scale });
      const canvas = document.createElement('canvas');
      canvas.width = Math.floor(viewport.width);
      canvas.height = Math.floor(viewport.height);
      await page.render({ canvas, viewport }).promise;
      const { items } = await page.getTextContent();
      const words = items.map((item) => ('str' in item ? item.str : '')).join(' ');
      yield { number, canvas, words };
    }
  } finally {
    await loading.destroy();
  }
}
