import { drawCaution } from './cautions.ts';
import { bodyStyle, type Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import type { TextStyle } from './lines.ts';
import { drawTable, penRow } from './table.ts';

/** Where the plan narrows one limb; every figure written out by the caller. */
export interface CutRow {
  fromFade: string;
  widthNow: string;
  offEachSide: string;
  offInAll: string;
  newWidth: string;
}

/** The accepted plan as the bench works from it. */
export interface WorkOrderPlan {
  /** Plan, its day, and who accepted it. */
  title: string;
  /** Method, face, target, stop, tiller, sanding, as name and value. */
  facts: [string, string][];
  /** Why nothing may be cut by it any more; empty while it fits. */
  doesNotFit: string[];
  /** Limbs whose width is cut, from the fade to the tip. */
  cuts: { limb: string; rows: CutRow[] }[];
  /** Limb and face, what comes off, and the glass that stays; empty where no face is touched. */
  faces: { where: string; off: string; glassLeft: string }[];
  /** What to mind of it, in sentences. */
  notes: string[];
}

const strongStyle: TextStyle = { font: fonts.semibold, size: 10 };

function cutTable(flow: Flow, limb: string, rows: readonly CutRow[]): void {
  // Whole on one page where a page can hold it.
  flow.heading(`Cut table, ${limb} limb`, Math.min((rows.length + 2) * penRow, flow.pageRoom - 60));
  drawTable(flow, {
    columns: [
      { head: 'From the fade', share: 9, names: true },
      { head: 'Width now', share: 9 },
      { head: 'Off each side', share: 14 },
      { head: 'Off in all', share: 14 },
      { head: 'New width', share: 9 },
      { head: 'Measured before', share: 12 },
      { head: 'Left off', share: 11 },
      { head: 'Right off', share: 11 },
      { head: 'Measured after', share: 11 },
    ],
    rows: rows.map((row) => [
      row.fromFade,
      row.widthNow,
      row.offEachSide,
      row.offInAll,
      row.newWidth,
    ]),
    rowHeight: penRow,
  });
}

function faceTable(flow: Flow, faces: WorkOrderPlan['faces']): void {
  if (faces.length === 0) return;
  flow.heading('Off the faces', faces.length * penRow + 20);
  drawTable(flow, {
    columns: [
      { head: 'Limb and face', share: 18, names: true },
      { head: 'Planned off', share: 15 },
      { head: 'Glass left after sanding', share: 22 },
      { head: 'Thickness before', share: 15 },
      { head: 'Thickness after', share: 15 },
      { head: 'By', share: 15 },
    ],
    rows: faces.map(({ where, off, glassLeft }) => [where, off, glassLeft]),
    rowHeight: penRow,
  });
}

/** The head of the plan; `above` points of cautions follow it before its facts. */
export function planHeading(flow: Flow, plan: WorkOrderPlan, above: number): void {
  const facts = (plan.facts.length + plan.doesNotFit.length + plan.notes.length) * 16;
  flow.heading(plan.title, Math.min(above + facts, flow.pageRoom - 60));
}

/** What was decided, and what to mind of it. */
export function drawPlanFacts(flow: Flow, plan: WorkOrderPlan): void {
  for (const sentence of plan.doesNotFit) drawCaution(flow, sentence, strongStyle);
  drawTable(flow, {
    plain: true,
    gapsAs: 4,
    columns: [
      { head: '', share: 17, names: true },
      { head: '', share: 83 },
    ],
    rows: plan.facts,
  });
  for (const sentence of plan.notes) flow.para(sentence, bodyStyle);
}

/** The cut in figures, with blanks for what is measured again, per limb and side. */
export function drawCuts(flow: Flow, plan: WorkOrderPlan): void {
  for (const { limb, rows } of plan.cuts) cutTable(flow, limb, rows);
  faceTable(flow, plan.faces);
}
