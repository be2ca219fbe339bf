import { type BenchPolicy, usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { decimal } from '../../../shared/measure.ts';

/** One figure of the policy: where it lies in it, and the unit that it is shown in. */
export interface PolicyField {
  path: string;
  label: string;
  unit: string;
  /** Shown figure over stored one: 100 for percent. */
  factor: number;
}

const kinds = ['longbow', 'hybrid', 'recurve'] as const;
const field = (path: string, label: string, unit: string, factor = 1): PolicyField => ({
  path,
  label,
  unit,
  factor,
});
const perKind = (path: string, label: string, unit: string, factor = 1) =>
  kinds.map((kind) => field(`${path}.${kind}`, `${label}, ${kind}`, unit, factor));

export const policyGroups: readonly { title: string; fields: readonly PolicyField[] }[] = [
  {
    title: 'What always stays on',
    fields: [
      field('limits.leastGlassIn', 'Least glass on a face, inches', 'in'),
      field('limits.leastGlassPart', 'Least glass, percent of when made', '%', 100),
      ...perKind('limits.leastWidthIn', 'Least width at a cut, inches', 'in'),
      ...perKind('limits.leastWidthToThickness', 'Least width over thickness', ''),
      ...perKind('limits.leastSideStiffness', 'Least side stiffness left, percent', '%', 100),
      field('limits.ratioFromFadeIn', 'Ratio counts from this far past the fade, inches', 'in'),
      field(
        'limits.ratioShortOfNockIn',
        'Ratio counts to this far short of the nock, inches',
        'in',
      ),
      field('limits.steepRecurveDeg', 'No narrowing of a hook that turns more, degrees', '°'),
      field('limits.smallestCutIn', 'No cut under this off both sides, inches', 'in'),
    ],
  },
  {
    title: 'How much in all',
    fields: [
      field('limits.noteDropPart', 'Drop noted from, percent', '%', 100),
      field('limits.confirmDropPart', 'Drop confirmed from, percent', '%', 100),
      field('limits.confirmDropLbf', 'Drop confirmed from, pounds', 'lb'),
      field('limits.refuseDropPart', 'Drop refused over, percent', '%', 100),
      field('reserveLbf', 'Kept above the target after sanding, pounds', 'lb'),
    ],
  },
  {
    title: 'What sanding takes, until closed jobs tell',
    fields: [
      field('allowances.full strip.meanThou', 'Full strip, thousandths a face', 'thou'),
      field('allowances.full strip.sdThou', 'Full strip, spread of that', 'thou'),
      field('allowances.final sanding only.meanThou', 'Final sanding, thousandths a face', 'thou'),
      field('allowances.final sanding only.sdThou', 'Final sanding, spread of that', 'thou'),
    ],
  },
  {
    title: 'Smallest steps of a hand',
    fields: [
      field('smallestSteps.sideIn', 'Off one side, inches', 'in'),
      field('smallestSteps.faceThou', 'Off each face, thousandths', 'thou'),
      field('smallestSteps.strokeThou', 'Light pass, thousandths a face', 'thou'),
    ],
  },
];

export const policyFields = policyGroups.flatMap(({ fields }) => fields);

/** Figures as shown, by path; the two choices beside them. */
export interface PolicyDraft {
  figures: Record<string, number | null>;
  trapFace: BenchPolicy['trapFace'];
  trackRule: BenchPolicy['trackRule'];
}

function figureAt(policy: BenchPolicy, path: string): number {
  const found = path.split('.').reduce<unknown>((at, key) => Object(at)[key] as unknown, policy);
  return typeof found === 'number' ? found : Number.NaN;
}

/** Without binary dust: 0.07 is 7 %. */
const shown = (policy: BenchPolicy, { path, factor }: PolicyField) =>
  Number((figureAt(policy, path) * factor).toFixed(6));

export function draftOf(policy: BenchPolicy): PolicyDraft {
  const figures = Object.fromEntries(policyFields.map((one) => [one.path, shown(policy, one)]));
  return { figures, trapFace: policy.trapFace, trackRule: policy.trackRule };
}

/** The draft as the contract takes it; checked by its schema, never here. */
export function policyOf({ figures, trapFace, trackRule }: PolicyDraft): BenchPolicy {
  const policy = structuredClone(usualBenchPolicy);
  for (const { path, factor } of policyFields) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const group = keys.reduce<unknown>((at, key) => Object(at)[key] as unknown, policy);
    const value = figures[path] ?? Number.NaN;
    Object.assign(Object(group), { [last]: value / factor });
  }
  return { ...policy, trapFace, trackRule };
}

/** What is usual, said under the field. */
export function usualText(one: PolicyField): string {
  const space = one.unit === '' || one.unit === '°' ? one.unit : ` ${one.unit}`;
  return `Common practice: ${decimal(shown(usualBenchPolicy, one), 4)}${space}`;
}
