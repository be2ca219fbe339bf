/** Hands a file to the browser's downloads under its own name. */
export function saveFile(file: File): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  // The download reads the blob after the click has returned.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** `12 kB`, `3.4 MB`. */
export function sizeText(bytes: number): string {
  if (bytes < 1_000_000) return `${Math.max(1, Math.round(bytes / 1000))} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}
