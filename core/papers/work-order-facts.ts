import type { WorkOrderData } from './data.ts';
import { bodyStyle, type Flow } from './flow.ts';
import { wrap } from './lines.ts';
import { drawTable } from './table.ts';

function bowFacts(data: WorkOrderData): [string, string][] {
  const { customer } = data;
  const contact = [customer?.phone ?? '', customer?.email ?? ''].filter((text) => text !== '');
  const rows: [string, string][] = [
    ['Customer', customer?.name ?? "the shop's own bow"],
    ...(data.bow?.facts ?? []),
  ];
  if (customer !== null && customer.lines.length > 0)
    rows.push(['Address', customer.lines.join('\n')]);
  if (contact.length > 0) rows.push(['Phone, email', contact.join('\n')]);
  return rows;
}

function workFacts(data: WorkOrderData): [string, string][] {
  const { order } = data;
  return [
    ['Work', order.services.join(', ') || 'none yet'],
    ['Taken in', order.createdOn],
    ['Promised', order.promisedOn ?? 'no date'],
    ['Stands in', order.stage],
    ['Came with', data.belongings || 'not listed yet'],
    ['Write on it', data.lettering.length === 0 ? 'nothing yet' : 'as below, under Lettering'],
  ];
}

/** Values of more than this many lines in half the width get the whole width. */
const shortLines = 5;
const labelShare = 17;

/** Label and value pairs, bow left and work right; long values below over the full width. */
export function drawFacts(flow: Flow, data: WorkOrderData): void {
  const short = ([, value]: [string, string]) =>
    wrap(flow.doc, value, flow.width * 0.32, bodyStyle).length <= shortLines;
  const sides = [bowFacts(data), workFacts(data)] as const;
  const [left, right] = [sides[0].filter(short), sides[1].filter(short)];
  const rows = Array.from({ length: Math.max(left.length, right.length) }, (_, i) => [
    ...(left[i] ?? ['', '']),
    ...(right[i] ?? ['', '']),
  ]);
  drawTable(flow, {
    plain: true,
    columns: [
      { head: '', share: labelShare, names: true },
      { head: '', share: 36 },
      { head: '', share: 12, names: true },
      { head: '', share: 35 },
    ],
    rows,
  });
  const long = sides.flat().filter((row) => !short(row));
  const notes: [string, string][] = [
    ['About the bow', data.bow?.notes ?? ''],
    ['Notes', data.order.notes],
  ];
  drawTable(flow, {
    plain: true,
    columns: [
      { head: '', share: labelShare, names: true },
      { head: '', share: 83 },
    ],
    gapsAs: 4,
    rows: [
      ...long.map(([label, value]) => [label, value.replaceAll('\n', ', ')]),
      ...notes.filter(([, value]) => value !== ''),
    ],
  });
}
