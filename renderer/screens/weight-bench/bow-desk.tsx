import { Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link, useSearchParams } from 'wouter';
import { orpc } from '../../api/client.ts';
import { Page } from '../../parts/page.tsx';
import { DeskBody } from './desk-body.tsx';
import { BeganFrom, StartLoader } from './start-loader.tsx';

const ownLimbs = 'own';

/** Which limbs of a take-down the what-if is about. */
function LimbSetChoice({ bowId, limbSetId }: { bowId: string; limbSetId: string | null }) {
  const [, setParams] = useSearchParams();
  const life = useQuery(orpc.bows.life.queryOptions({ input: { id: bowId } }));
  const sets = life.data?.limbSets ?? [];
  if (sets.length === 0) return null;
  return (
    <Select
      label="Limbs"
      maw={360}
      mb="sm"
      data={[
        { value: ownLimbs, label: "The bow's own limbs" },
        ...sets.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      value={limbSetId ?? ownLimbs}
      onChange={(value) =>
        setParams(value === null || value === ownLimbs ? {} : { limbs: value }, { replace: true })
      }
    />
  );
}

/** A what-if on a bow that the shop knows; no order is about it and nothing is accepted. */
export function BowDesk({ id }: { id: string }) {
  const [params] = useSearchParams();
  const limbSetId = params.get('limbs');
  const query = useQuery(orpc.plans.startFromBow.queryOptions({ input: { bowId: id, limbSetId } }));
  const name = query.data?.about.bowName ?? '';
  return (
    <Page
      title={name === '' ? 'What-if' : `What-if  ${name}`}
      windowTitle={`What-if ${name}`}
      actions={<Link href={`/bows/${id}`}>To the bow</Link>}
    >
      <LimbSetChoice bowId={id} limbSetId={limbSetId} />
      <StartLoader query={query}>
        {(fresh) => (
          <BeganFrom key={limbSetId ?? ownLimbs} fresh={fresh}>
            {(start, changed, _, times) => (
              <DeskBody key={times} start={start} story={{ weighings: [] }}>
                {changed}
              </DeskBody>
            )}
          </BeganFrom>
        )}
      </StartLoader>
    </Page>
  );
}
