/// <reference types="vite/client" />

interface Window {
  /** Put there by the desktop window's preload. */
  readonly tillermarkDesktop?: import('../shared/desktop.ts').TillermarkDesktop;
}
