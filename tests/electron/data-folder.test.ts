import { resolve } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { dataFolderOf } from '../../core/storage/data-folder.ts';
import { dataArgumentFor, dataFolderFrom } from '../../electron/data-folder.ts';

afterEach(() => vi.unstubAllEnvs());

test('the command line comes first, then TILLERMARK_DATA', () => {
  vi.stubEnv('TILLERMARK_DATA', '/from-environment');
  expect(dataFolderFrom(['electron', '.', '--data=/from-argument'])).toBe(
    resolve('/from-argument'),
  );
  expect(dataFolderFrom(['electron', '.'])).toBe(resolve('/from-environment'));
  expect(dataFolderFrom(['electron', '.', '--data='])).toBe(resolve('/from-environment'));
});

test('otherwise it is the very folder the browser program uses', () => {
  vi.stubEnv('TILLERMARK_DATA', undefined);
  // Only the name is worked out here; nothing opens it.
  vi.stubEnv('NODE_ENV', 'production');
  expect(dataFolderFrom(['electron', '.'])).toBe(dataFolderOf({}));
});

test('the core process reads back what it was told', () => {
  expect(dataFolderFrom(['core', dataArgumentFor('/a shop = mine')])).toBe(
    resolve('/a shop = mine'),
  );
});
