import { runCommand } from '../core/storage/commands.ts';
export const x = runCommand;
