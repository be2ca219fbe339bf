import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** An empty folder of this test alone, removed when the test ends. */
export function tempFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'tillermark-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
