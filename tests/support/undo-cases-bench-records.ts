import { newCommandId } from './test-shop.ts';
import type { UndoShop } from './undo-shop.ts';

type Case = (kit: UndoShop) => Promise<(commandId: string) => Promise<unknown>>;

const nothingSeen = {
  showThrough: false,
  strands: false,
  runOut: false,
  exposedCore: false,
  note: '',
};
const even = {
  tillerIn: 0,
  upperTrack: 'centre',
  lowerTrack: 'left',
  braceIn: 7.25,
  note: '',
} as const;
const reason = 'the wrong bow';

async function atBench(kit: UndoShop): Promise<void> {
  await kit.flow.grant('alteration-acknowledgement');
  await kit.place('weight-work');
}

async function bitten(kit: UndoShop) {
  await atBench(kit);
  const bite = await kit.flow.bite();
  if (bite.outcome !== 'recorded') throw new Error('the bite was refused');
  return bite;
}

/** What is written down at the bench without a reckoned plan. */
export const undoCasesBenchRecords: Record<string, Case> = {
  'bench.noteRemoval': async (kit) => {
    await atBench(kit);
    return (commandId) =>
      kit.client.bench.noteRemoval({ commandId, orderId: kit.orderId, note: 'upper, a stroke' });
  },
  'bench.checkGlass':
    async ({ client, orderId }) =>
    (commandId) =>
      client.bench.checkGlass({ commandId, orderId, ...nothingSeen }),
  'bench.readTiller':
    async ({ client, orderId }) =>
    (commandId) =>
      client.bench.readTiller({ commandId, orderId, ...even }),
  'bench.strikeOutRemoval': async (kit) => {
    const { id, rowVersion } = await bitten(kit);
    return (commandId) => kit.client.bench.strikeOutRemoval({ commandId, id, rowVersion, reason });
  },
  'bench.strikeOutGlassCheck': async ({ client, orderId }) => {
    const commandId = newCommandId();
    const { id, rowVersion } = await client.bench.checkGlass({
      commandId,
      orderId,
      ...nothingSeen,
    });
    return (next) => client.bench.strikeOutGlassCheck({ commandId: next, id, rowVersion, reason });
  },
  'bench.strikeOutTiller': async ({ client, orderId }) => {
    const commandId = newCommandId();
    const { id, rowVersion } = await client.bench.readTiller({ commandId, orderId, ...even });
    return (next) => client.bench.strikeOutTiller({ commandId: next, id, rowVersion, reason });
  },
};
