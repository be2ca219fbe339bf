import { Button, Group, Stack } from '@mantine/core';
import { useMutation, useQuery } from '@tanstack/react-query';
import { api, orpc } from '../../api/client.ts';
import { queryClient } from '../../api/queries.ts';
import { useWho } from '../../api/who.ts';
import { Facts } from '../../parts/facts.tsx';
import { Mark } from '../../parts/mark.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { saveFile, sizeText } from '../../parts/save-file.ts';
import { Backups } from './backups.tsx';

/** Where everything is, how it is kept safe, and what to send when something fails. */
export function DataFolder({ isOwner }: { isOwner: boolean }) {
  const mayBackUp = useWho()?.role !== 'bench';
  const status = useQuery(orpc.system.status.queryOptions());
  return (
    <Stack>
      <Panel title="Where it is">
        {status.error === null ? null : (
          <ErrorNote error={status.error} onAgain={() => void status.refetch()} />
        )}
        {status.data === undefined ? (
          <BusyNote />
        ) : (
          <Facts
            facts={[
              ['Data folder', status.data.dataFolder],
              ['Program', `Tillermark ${status.data.version}`],
            ]}
          />
        )}
      </Panel>
      {mayBackUp ? <BackupPanel /> : null}
      {isOwner ? <ReportPanel /> : null}
    </Stack>
  );
}

function BackupPanel() {
  const make = useMutation({
    mutationFn: () => api.system.backUpNow(),
    onSuccess: () => queryClient.invalidateQueries({ queryKey: orpc.system.backups.key() }),
  });
  return (
    <Panel
      title="Backups"
      actions={
        <Button loading={make.isPending} onClick={() => make.mutate()}>
          Back up now
        </Button>
      }
    >
      <Stack gap="sm">
        <div role="status">
          {make.data === undefined ? null : (
            <Mark kind="done">
              {make.data.name}, {sizeText(make.data.bytes)}
            </Mark>
          )}
        </div>
        {make.error === null ? null : (
          <ErrorNote error={make.error} onAgain={() => make.mutate()} />
        )}
        <Backups />
        <p style={{ margin: 0, color: 'var(--quiet)' }}>
          They lie in the data folder and hold the records. Photographs and files stay in its folder
          "attachments", under their own names for good: copy the whole data folder to another disk
          now and then.
        </p>
      </Stack>
    </Panel>
  );
}

function ReportPanel() {
  const report = useMutation({
    mutationFn: () => api.system.problemReport(),
    onSuccess: saveFile,
  });
  return (
    <Panel title="When something fails">
      <p style={{ marginTop: 0 }}>
        A problem report holds the program's log without names of customers. Nothing is sent
        anywhere: you save a file and decide whom to give it.
      </p>
      {report.error === null ? null : (
        <ErrorNote error={report.error} onAgain={() => report.mutate()} />
      )}
      <Group mt="sm">
        <Button variant="default" loading={report.isPending} onClick={() => report.mutate()}>
          Save a problem report
        </Button>
      </Group>
    </Panel>
  );
}
