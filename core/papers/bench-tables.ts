import { cautionsHeight, drawCautions, markIndent } from './cautions.ts';
import type { WorkOrderData } from './data.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { octagon } from './marks.ts';
import { artifact, stopBrick } from './sheet.ts';
import { drawTable, penRow } from './table.ts';
import { drawCuts, drawPlanFacts, planHeading } from './work-order-plan.ts';

const bites = ['Before', '1', '2', '3', '4', '5', '6'];
const stationBlanks = 8;
const stationsPerTable = 8;

function drawBites(flow: Flow): void {
  drawTable(flow, {
    columns: [
      { head: 'Bite', share: 9, names: true },
      { head: 'Upper, off each side', share: 15 },
      { head: 'Lower, off each side', share: 15 },
      { head: 'Glass looked at', share: 12 },
      { head: 'Tiller upper', share: 12 },
      { head: 'Tiller lower', share: 12 },
      { head: 'Weight, lb', share: 13 },
      { head: 'at draw', share: 12 },
      { head: 'By', share: 10 },
    ],
    rows: bites.map((bite) => [bite]),
    rowHeight: penRow,
  });
}

function drawWidths(flow: Flow, stations: readonly string[]): void {
  const named = stations.length > 0 ? stations : Array.from({ length: stationBlanks }, () => '');
  for (let from = 0; from < named.length; from += stationsPerTable) {
    const part = named.slice(from, from + stationsPerTable);
    drawTable(flow, {
      columns: [
        { head: 'Station', share: 20, names: true },
        ...part.map((_, i) => ({ head: String(from + i + 1), share: 11 })),
      ],
      rows: [
        ['From the fade', ...part],
        ...['Upper, planned', 'Upper, before', 'Upper, after'].map((name) => [name]),
        ...['Lower, planned', 'Lower, before', 'Lower, after'].map((name) => [name]),
      ],
      rowHeight: penRow,
    });
  }
}

function drawWeighing(flow: Flow): void {
  drawTable(flow, {
    columns: [
      { head: 'When', share: 14, names: true },
      { head: 'Brace', share: 14 },
      { head: 'Tiller upper', share: 14 },
      { head: 'Tiller lower', share: 14 },
      { head: 'Weight, lb', share: 17 },
      { head: 'at draw', share: 14 },
      { head: 'By', share: 13 },
    ],
    rows: [['Before'], ['After']],
    rowHeight: penRow,
  });
}

function stopReminder(flow: Flow): void {
  const { doc, left, y } = flow;
  artifact(doc, () => octagon(doc, left, y + 2, 10));
  const style = { font: fonts.bold, size: 11, color: stopBrick };
  flow.para('Not before the stop finding on page 1 is resolved.', style, markIndent);
}

/** What must be read before the first stroke; the stop reminder first. */
function mind(flow: Flow, data: WorkOrderData): void {
  if (data.stopFindings.length > 0) stopReminder(flow);
  drawCautions(flow, data.cautions);
}

function mindHeight(flow: Flow, data: WorkOrderData): number {
  return cautionsHeight(flow, data.cautions) + (data.stopFindings.length > 0 ? 20 : 0);
}

/** The plan in figures, with the cautions before it. */
export function drawPlan(flow: Flow, data: WorkOrderData): void {
  const { plan } = data;
  if (plan === null) return;
  planHeading(flow, plan, mindHeight(flow, data));
  mind(flow, data);
  drawPlanFacts(flow, plan);
}

/**
 * What to cut and blanks for what is measured at the bench. The cautions stand once: with the plan,
 * or without one before the first table to work from.
 * Without a target weight there are no bites to plan.
 */
export function drawBenchTables(flow: Flow, data: WorkOrderData): void {
  const { plan } = data;
  if (plan !== null) drawCuts(flow, plan);
  const cutting = data.order.target !== null;
  const rows = cutting ? bites.length : 2;
  const above = plan === null ? mindHeight(flow, data) : 0;
  const keep = above + rows * penRow + 60;
  flow.heading(cutting ? 'Bites' : 'Weighing', Math.min(keep, flow.pageRoom - 60));
  if (plan === null) mind(flow, data);
  if (!cutting) {
    drawWeighing(flow);
    return;
  }
  flow.para('After each bite: re-round the edges, look at the glass, flex, read tiller, weigh.');
  drawBites(flow);
  if (plan !== null && plan.doesNotFit.length === 0) return;
  flow.heading('Limb width at each station', 7 * penRow + 30);
  drawWidths(flow, data.stations ?? []);
}
