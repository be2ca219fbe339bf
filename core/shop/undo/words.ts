import type { Stage } from '../../../shared/stages.ts';
import { stageLabels } from '../../../shared/stages.ts';
import type { RecordTable } from '../../storage/commands.ts';
import { type Done, isTouch, keptTables, type RowWrite } from './done.ts';
import { labelOf } from './undoable.ts';

/** What a row is called; null for rows that are part of another. */
const nouns: Record<RecordTable, string | null> = {
  shop: 'shop',
  person: 'person',
  customer: 'customer',
  bow: 'bow',
  limb_set: 'limb set',
  geometry: 'measured limbs',
  geometry_station: null,
  shop_order: 'order',
  hold: 'hold',
  reminder: 'reminder',
  arrival: 'arrival',
  belonging: 'belonging',
  undershoot: 'undershoot offer',
  incident: 'incident',
  carrier: 'carrier',
  shipment: 'shipment',
  attachment: 'photograph',
  task: 'task',
  entry: 'entry',
  finding: 'finding',
  scale: 'scale',
  scale_check: 'scale check',
  reading: 'weighing',
  reading_pull: null,
  consent: 'consent',
  consent_answer: 'answer',
  paper: 'paper',
  order_history: null,
  bench_policy: 'bench setting',
  weight_plan: 'weight plan',
  removal: 'removal',
  removal_cut: null,
  removal_face: null,
  glass_check: 'glass check',
  tiller_reading: 'tiller reading',
  surprise: 'answers about a surprising reading',
  wording: 'wording',
  consent_reminder: 'reminder',
  message: 'message',
  inscription: 'lettering',
  price_service: 'service price',
  price_line: 'price line',
  payment: 'payment',
  consumable: 'consumable',
  lot: 'lot',
  stock_move: 'stock move',
  finish_system: 'finish system',
  order_finish: 'finish',
  batch: 'batch',
  air_reading: 'air reading',
  spray_session: 'spray session',
  coat: 'coat',
  surface_reading: 'surface reading',
  sanding: 'sanding',
};

export function nounOf(table: string): string {
  return nouns[table as RecordTable] ?? 'record';
}

/** What a command did: its own lines of history, or its label where it wrote none. */
export function whatOf(done: Pick<Done, 'name' | 'lines'>): string {
  const told = done.lines.filter(({ kind }) => kind !== 'override').map((line) => line.summary);
  return told.length === 0 ? labelOf(done.name) : [...new Set(told)].join('; ').slice(0, 990);
}

/** Old and new stage, where the command moved an order. */
export function stagesOf(write: RowWrite): { from: Stage; to: Stage } | null {
  if (write.table !== 'shop_order' || write.before === null || write.after === null) return null;
  const from = write.before.stage as Stage;
  const to = write.after.stage as Stage;
  return from === to ? null : { from, to };
}

function list(words: readonly string[]): string {
  const unique = [...new Set(words)].map((word) => `the ${word}`);
  return [unique.slice(0, -1).join(', '), ...unique.slice(-1)].filter(Boolean).join(' and ');
}

/** What taking it back does to the records. */
export function effectOf(writes: readonly RowWrite[]): string {
  const real = writes.filter((write) => !isTouch(write) && !keptTables.includes(write.table));
  const named = (part: readonly RowWrite[]) =>
    list(part.flatMap(({ table }) => nouns[table] ?? []));
  const added = named(real.filter((write) => write.before === null));
  const moved = real.map(stagesOf).find((stages) => stages !== null);
  const changed = named(real.filter((write) => write.before !== null && stagesOf(write) === null));
  return [
    added === '' ? '' : `Takes out ${added}.`,
    changed === '' ? '' : `Puts back what ${changed} said before.`,
    moved === undefined ? '' : `Puts the order back to "${stageLabels[moved.from]}".`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
    .slice(0, 400);
}
