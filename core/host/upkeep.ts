import type { ContractOutputs } from '../../shared/contract/types.ts';
import { backUp, listBackups } from '../storage/backup.ts';
import { problemReport } from '../storage/problem-report.ts';
import type { Core } from './core.ts';
import { version } from './version.ts';

type Backup = ContractOutputs['system']['backUpNow'];

export async function backupsOf(core: Core): Promise<Backup[]> {
  return listBackups(core.ready().folder.root);
}

export async function backUpNow(core: Core): Promise<Backup> {
  const ready = core.ready();
  return backUp(ready.database.writer, ready.folder.root, core.now());
}

/** Logs and versions, zipped, also while the shop cannot be opened; no name and no customer's data. */
export async function problemReportOf(core: Core): Promise<File> {
  const status = await core.status();
  const bytes = await problemReport(core.dataFolder, { version, startUp: status.startUp });
  return new File([bytes as BlobPart], `tillermark problem report ${core.now().slice(0, 10)}.zip`, {
    type: 'application/zip',
  });
}
