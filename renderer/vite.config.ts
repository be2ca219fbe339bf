import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  // Absolute: a page deep in a route must find the same files when it is loaded again.
  base: '/',
  plugins: [react()],
  server: { fs: { allow: [here('..')] } },
  build: {
    outDir: here('../dist/renderer'),
    emptyOutDir: true,
    target: 'chrome130',
    // The content security policy allows files of this address only, no data: scripts or workers.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1500,
  },
});
