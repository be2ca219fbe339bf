import { dataFolderOf } from '../core/storage/data-folder.ts';

const flag = '--data=';

/** The data folder as the core process is told it. */
export function dataArgumentFor(folder: string): string {
  return flag + folder;
}

/** The folder that holds the shop: `--data=DIR`, else TILLERMARK_DATA, else the usual place. */
export function dataFolderFrom(argv: readonly string[]): string {
  const argument = argv.find((part) => part.startsWith(flag))?.slice(flag.length);
  return dataFolderOf({ argument: argument === '' ? undefined : argument });
}
