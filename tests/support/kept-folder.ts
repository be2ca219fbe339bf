import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** An empty folder for a whole test file, which removes it at the end. */
export function keptFolder(): { path: string; remove(): void } {
  const path = mkdtempSync(join(tmpdir(), 'tillermark-e2e-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}
