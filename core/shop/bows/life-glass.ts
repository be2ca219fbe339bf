import { glassHowLabels } from '../../../shared/bows.ts';
import type { LifeEvent } from '../../../shared/contract/bow-life.ts';
import { glassText } from '../../../shared/face-text.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow } from '../../storage/tables.ts';
import { joined, lifeEvent } from './life-event.ts';

type GlassColumns = Pick<
  BowRow,
  | 'back_facing'
  | 'back_glass_made_in'
  | 'back_glass_now_in'
  | 'back_glass_how'
  | 'belly_facing'
  | 'belly_glass_made_in'
  | 'belly_glass_now_in'
  | 'belly_glass_how'
>;

/** Glass of both faces in words. Rows of the first schema know none of these columns. */
function glassOf(json: string | null): string {
  if (json === null) return '';
  const row = JSON.parse(json) as Partial<GlassColumns>;
  const face = (side: 'back' | 'belly') => {
    const text = glassText({
      facing: row[`${side}_facing`] ?? 'unknown',
      glassMadeIn: row[`${side}_glass_made_in`] ?? null,
      glassNowIn: row[`${side}_glass_now_in`] ?? null,
      glassHow: row[`${side}_glass_how`] ?? 'not-measured',
    });
    return text === '' ? '' : `${side} ${text}`;
  };
  return joined([face('back'), face('belly')]);
}

/** Each time somebody wrote another glass thickness into the bow, from what every command keeps. */
export async function glassEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('command_change')
    .innerJoin('command', 'command.id', 'command_change.command_id')
    .innerJoin('person', 'person.id', 'command.person_id')
    .select(['command.id', 'command.at', 'person.name'])
    .select(['command_change.before_json', 'command_change.after_json'])
    .where('command_change.table_name', '=', 'bow')
    .where('command_change.row_id', '=', bowId)
    .execute();
  return rows.flatMap((row) => {
    const now = glassOf(row.after_json);
    if (now === glassOf(row.before_json)) return [];
    return lifeEvent({
      id: `glass-${row.id}`,
      at: row.at,
      kind: 'glass',
      title: `Glass: ${now === '' ? glassHowLabels['not-measured'] : now}`,
      personName: row.name,
      order: null,
    });
  });
}
