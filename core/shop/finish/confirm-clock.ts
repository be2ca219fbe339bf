import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { clockConfirmed, readClockTrouble } from './clock-trouble.ts';

/**
 * The owner has looked at the clock of the computer. The command itself is the record: who, and
 * at which instant. It changes no row.
 * @throws ShopError CONFLICT where nothing is wrong with the clock.
 * @see contract.clocks.confirm
 */
export function confirmClock(
  ctx: ShopContext,
  input: ContractInputs['clocks']['confirm'],
): Promise<ContractOutputs['clocks']['confirm']> {
  return runCommand(ctx, { id: input.commandId, name: clockConfirmed }, async (trx) => {
    if ((await readClockTrouble(trx.db, trx.at)) === null) {
      throw new ShopError('CONFLICT', 'The clock agrees with the records: go on working.');
    }
    return { confirmedAt: trx.at };
  });
}
