import { Button, Group } from '@mantine/core';
import { useMutation } from '@tanstack/react-query';
import { api } from '../../api/client.ts';
import { showFolder } from '../../api/show-folder.ts';
import { Mark } from '../../parts/mark.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';

/** The other way in: an invented shop with work on every bench, beside one's own and never in it. */
export function LookAtDemo({ trouble }: { trouble: string | null }) {
  const open = useMutation({
    mutationFn: () => api.system.openDemo(),
    onSuccess: showFolder,
  });
  return (
    <Panel title="Look at the demo shop first">
      <p>
        An invented shop in a folder of its own: 25 customers, 40 bows, and orders at every stage.
        Try anything; your own shop stays as it is.
      </p>
      {trouble === null ? null : <Mark kind="attention">{trouble}</Mark>}
      {open.error === null ? null : <ErrorNote error={open.error} />}
      <Group mt="sm">
        <Button variant="default" loading={open.isPending} onClick={() => open.mutate()}>
          Open the demo shop
        </Button>
      </Group>
    </Panel>
  );
}
