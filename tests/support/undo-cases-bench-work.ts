import type { BenchView } from '../../shared/contract/bench-work.ts';
import { newCommandId } from './test-shop.ts';
import { undoCasesPlans } from './undo-cases-plans.ts';
import type { UndoShop } from './undo-shop.ts';

type Case = (kit: UndoShop) => Promise<(commandId: string) => Promise<unknown>>;

/** A plan accepted, and the bow at weight work. */
async function planned(kit: UndoShop): Promise<BenchView> {
  const accept = await undoCasesPlans['plans.accept'](kit);
  await accept(newCommandId());
  await kit.flow.grant('alteration-acknowledgement');
  await kit.place('weight-work');
  return kit.client.bench.get({ orderId: kit.orderId });
}

const bite = ({ orderId }: UndoShop, { advice }: BenchView) => ({
  orderId,
  advice,
  other: null,
  tool: '',
  note: '',
});

/** One bite taken and measured again, as it was meant to come out. */
async function measured(kit: UndoShop) {
  const view = await planned(kit);
  await kit.client.bench.takeBite({ commandId: newCommandId(), ...bite(kit, view) });
  const { step } = await kit.client.bench.get({ orderId: kit.orderId });
  if (step.kind !== 'remeasure') throw new Error(`${step.kind}: nothing to measure`);
  const { removalId, rowVersion } = step;
  const widths = step.places.map(({ limb, fromFadeIn, expectedIn }) => ({
    limb,
    fromFadeIn,
    widthIn: expectedIn,
  }));
  return { removalId, rowVersion, widths, faces: [] };
}

/** A weighing far from what was expected. */
async function surprised(kit: UndoShop) {
  await planned(kit);
  await kit.flow.weigh(kit.scaleId, 'work', 48);
  const { step } = await kit.client.bench.get({ orderId: kit.orderId });
  if (step.kind !== 'questions') throw new Error(`${step.kind}: nothing is asked`);
  return step;
}

/** What is worked by advice, taken back. */
export const undoCasesBenchWork: Record<string, Case> = {
  'bench.takeBite': async (kit) => {
    const view = await planned(kit);
    return (commandId) => kit.client.bench.takeBite({ commandId, ...bite(kit, view) });
  },
  'bench.remeasure': async (kit) => {
    const widths = await measured(kit);
    return (commandId) => kit.client.bench.remeasure({ commandId, ...widths });
  },
  'bench.recordSanding': async (kit) => {
    await planned(kit);
    await kit.place('strip-sand');
    const { advice } = await kit.client.bench.get({ orderId: kit.orderId });
    const sanded = { orderId: kit.orderId, advice, tool: '320 grit', note: '' };
    return (commandId) => kit.client.bench.recordSanding({ commandId, ...sanded });
  },
  'bench.answerSurprise': async (kit) => {
    const { readingId, rowVersion, questions } = await surprised(kit);
    const answers = questions.map(({ about }) => ({ about, isRight: about !== 'rig zero' }));
    const answered = { readingId, rowVersion, answers, note: '' };
    return (commandId) => kit.client.bench.answerSurprise({ commandId, ...answered });
  },
};
