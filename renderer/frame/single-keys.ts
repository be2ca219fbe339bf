const key = 'tillermark-single-keys';

/** Single keys can be switched off: speech input and stray touches set them off (WCAG 2.2, 2.1.4). */
export function singleKeysOn(): boolean {
  return localStorage.getItem(key) !== 'off';
}

export function setSingleKeys(on: boolean): void {
  localStorage.setItem(key, on ? 'on' : 'off');
}
