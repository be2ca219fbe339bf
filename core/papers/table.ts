import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { type Element, element } from './pdfkit-gaps.ts';
import { artifact, quiet } from './sheet.ts';

/** Least height of a row that is filled in by hand, points (8.5 mm): a pencil in a gloved hand. */
export const penRow = 24;

export interface Column {
  head: string;
  /** Share of the width. */
  share: number;
  /** The cells of this column name their row. */
  names?: boolean;
  /** Amounts stand at the right, so that their digits line up. */
  align?: 'right';
}

export interface TableSpec {
  columns: readonly Column[];
  /** An empty cell is a blank to write in by hand. */
  rows: readonly (readonly string[])[];
  /** Least height of a row, points. */
  rowHeight?: number;
  /** Least height of a row with a blank in it, points, where the others may be lower. */
  blankHeight?: number;
  /** Without rules and without a head row: labels and values. */
  plain?: boolean;
  /** Without a head row: the names of the rows say all. */
  headless?: boolean;
  /** Spaces the shares as in a table of this many columns, so that two tables line up. */
  gapsAs?: number;
}

const cellStyle: TextStyle = { font: fonts.regular, size: 9.5 };
const headStyle: TextStyle = { font: fonts.semibold, size: 9 };
const nameStyle: TextStyle = { font: fonts.regular, size: 9.5, color: quiet };
const gap = 8;
const padding = { top: 3, bottom: 2 };

interface Grid {
  flow: Flow;
  spec: TableSpec;
  table: Element;
  places: readonly { x: number; width: number }[];
  head: readonly (readonly string[])[];
  headHeight: number;
}

const isHeadless = ({ plain, headless }: TableSpec) => plain === true || headless === true;

function gridOf(flow: Flow, spec: TableSpec, table: Element): Grid {
  const shares = spec.columns.reduce((sum, column) => sum + column.share, 0);
  const usable = flow.width - gap * ((spec.gapsAs ?? spec.columns.length) - 1);
  const end = flow.left + flow.width;
  let x = flow.left;
  const places = spec.columns.map((column, i) => {
    const last = i === spec.columns.length - 1;
    const width = last ? end - x : (column.share / shares) * usable;
    const place = { x, width };
    x += width + gap;
    return place;
  });
  const head = spec.columns.map((column, i) =>
    wrap(flow.doc, column.head, places[i]?.width ?? 0, headStyle),
  );
  const tallest = Math.max(...head.map((lines) => lines.length));
  const headHeight = isHeadless(spec)
    ? 0
    : tallest * lineHeight(headStyle) + padding.top + padding.bottom;
  return { flow, spec, table, places, head, headHeight };
}

/** Rules under a row, one per cell: the gaps between them show where one blank ends. */
function rules(grid: Grid): void {
  const { doc, y } = grid.flow;
  artifact(doc, () => {
    for (const { x, width } of grid.places) doc.moveTo(x, y).lineTo(x + width, y);
    doc.lineWidth(0.5).stroke(quiet);
  });
}

function cellBox({ places, spec }: Grid, index: number) {
  const { x, width } = places[index] ?? { x: 0, width: 0 };
  return { x, width, align: spec.columns[index]?.align ?? ('left' as const) };
}

function headText(grid: Grid, index: number): void {
  const { flow, head, headHeight } = grid;
  const lines = head[index] ?? [];
  const y = flow.y + headHeight - padding.bottom - lines.length * lineHeight(headStyle);
  drawLines(flow.doc, lines, { ...cellBox(grid, index), y }, headStyle);
}

function headRow(grid: Grid, repeated: boolean): void {
  const { flow, spec, table } = grid;
  if (isHeadless(spec)) return;
  if (repeated) {
    artifact(flow.doc, () => spec.columns.forEach((_, i) => void headText(grid, i)), 'Pagination');
  } else {
    const row = element(flow.doc, 'TR');
    table.add(row);
    spec.columns.forEach((_, i) => {
      flow.tagged('TH', () => headText(grid, i), { scope: 'Column' }, row);
    });
    row.end();
  }
  flow.y += grid.headHeight;
  rules(grid);
}

function cellElements(grid: Grid): Element[] {
  const { flow, spec, table } = grid;
  const row = element(flow.doc, 'TR');
  table.add(row);
  return spec.columns.map((column) => {
    const cell = column.names ? element(flow.doc, 'TH', { scope: 'Row' }) : element(flow.doc, 'TD');
    row.add(cell);
    return cell;
  });
}

interface Row {
  cells: readonly (readonly string[])[];
  styles: readonly TextStyle[];
  /** Lines of the tallest cell. */
  count: number;
  /** Points: at least, and with all its lines. */
  least: number;
  height: number;
}

const step = lineHeight(cellStyle);
const pad = padding.top + padding.bottom;
/** Rows of more lines than this may be cut where a page ends; shorter ones move whole. */
const wholeLines = 8;

function wrapped(grid: Grid, texts: readonly string[]): Row {
  const { flow, spec, places } = grid;
  const styles = spec.columns.map((column) => (column.names ? nameStyle : cellStyle));
  const cells = styles.map((style, i) =>
    wrap(flow.doc, texts[i] ?? '', places[i]?.width ?? 0, style),
  );
  const count = Math.max(1, ...cells.map((lines) => lines.length));
  const hasBlank = spec.columns.some((_, i) => (texts[i] ?? '') === '');
  const least = Math.max(spec.rowHeight ?? 0, hasBlank ? (spec.blankHeight ?? 0) : 0);
  return { cells, styles, count, least, height: Math.max(least, count * step + pad) };
}

/** Lines from `from` that go on this page. Single lines stand low in tall rows, on their rule. */
function rowPiece(grid: Grid, row: Row, elements: readonly Element[], from: number): number {
  const { flow, spec } = grid;
  const { least } = row;
  const taken = Math.min(Math.max(1, Math.floor((flow.room - pad) / step)), row.count - from);
  const y = flow.y + Math.max(padding.top, row.count === 1 ? least - step - 2 : 0);
  elements.forEach((cell, i) => {
    const lines = (row.cells[i] ?? []).slice(from, from + taken);
    const box = { ...cellBox(grid, i), y };
    if (lines.length > 0)
      cell.add(() => drawLines(flow.doc, lines, box, row.styles[i] ?? cellStyle));
  });
  flow.y += Math.max(least, taken * step + pad);
  if (!spec.plain) rules(grid);
  return taken;
}

function bodyRow(grid: Grid, texts: readonly string[]): void {
  const { flow } = grid;
  const row = wrapped(grid, texts);
  const nextPage = () => {
    flow.newPage();
    headRow(grid, true);
  };
  const cut = row.count > wholeLines && flow.room > (wholeLines / 2) * step + pad;
  if (row.height > flow.room && !cut) nextPage();
  const elements = cellElements(grid);
  let at = rowPiece(grid, row, elements, 0);
  while (at < row.count) {
    nextPage();
    at += rowPiece(grid, row, elements, at);
  }
}

/** A ruled table; its head is repeated where it runs over a page. */
export function drawTable(flow: Flow, spec: TableSpec): void {
  if (spec.rows.length === 0) return;
  const table = element(flow.doc, 'Table');
  const grid = gridOf(flow, spec, table);
  flow.needs(grid.headHeight + Math.max(spec.rowHeight ?? 0, 3 * lineHeight(cellStyle)));
  flow.root.add(table);
  headRow(grid, false);
  for (const row of spec.rows) bodyRow(grid, row);
  table.end();
  flow.y += 4;
}
