import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../../api/client.ts';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { lastOf } from '../../bows/geometry/geometry-panel.tsx';
import { GeometryVersions } from '../../bows/geometry/geometry-versions.tsx';
import { StationsForm } from '../../bows/geometry/stations-form.tsx';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { geometryState } from '../section-states.ts';

/** What the limbs of this order's bow measured, and the form for the next measuring. */
export function Geometry() {
  const { order, opened, open } = useOrder();
  const { bow, limbSet } = order;
  const isAsked = opened.geometry !== undefined;
  const query = useQuery({
    ...orpc.geometry.list.queryOptions({ input: { bowId: bow?.id ?? '' } }),
    enabled: bow !== null,
  });
  const versions = query.data?.filter((one) => one.limbSetId === (limbSet?.id ?? null));
  return (
    <OrderSection
      place="geometry"
      title="Limbs measured"
      state={bow === null ? 'identify the bow first' : geometryState(versions)}
      actions={
        bow === null || isAsked ? null : (
          <Button variant="default" onClick={() => open('geometry')}>
            Measure the limbs
          </Button>
        )
      }
    >
      {bow === null || (versions?.length === 0 && !isAsked) ? null : <OfBow bowId={bow.id} />}
    </OrderSection>
  );
}

function OfBow({ bowId }: { bowId: string }) {
  const { order, opened, close } = useOrder();
  const query = useQuery(orpc.geometry.list.queryOptions({ input: { bowId } }));
  if (query.isPending) return <BusyNote />;
  if (query.isError) return <ErrorNote error={query.error} onAgain={() => void query.refetch()} />;
  const limbSetId = order.limbSet?.id ?? null;
  const opening = opened.geometry;
  return (
    <>
      {opening === undefined ? null : (
        <StationsForm
          of={{ bowId, limbSetId, orderId: order.card.id }}
          last={lastOf(query.data, limbSetId)}
          times={opening.times}
          onClose={() => close('geometry')}
        />
      )}
      <GeometryVersions versions={query.data.filter((one) => one.limbSetId === limbSetId)} />
    </>
  );
}
