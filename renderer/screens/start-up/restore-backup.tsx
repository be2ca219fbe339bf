import { Button, Group, Radio, ScrollArea, Stack } from '@mantine/core';
import { useState } from 'react';
import { Panel } from '../../parts/panel.tsx';

interface RestoreBackupProps {
  /** File names, newest first. */
  backups: readonly string[];
  busy: boolean;
  onRestore: (name: string) => void;
}

/** The file that is there now is kept aside by the core, so restoring loses nothing more. */
export function RestoreBackup({ backups, busy, onRestore }: RestoreBackupProps) {
  const [chosen, setChosen] = useState(backups[0] ?? '');
  if (backups.length === 0) return null;
  return (
    <Panel title="Restore a backup">
      <Radio.Group
        size="md"
        label="Newest first"
        description="What was done after the backup has to be written again. The present file is kept aside."
        value={chosen}
        onChange={setChosen}
      >
        <ScrollArea.Autosize mah={260} mt="xs" type="auto">
          <Stack gap="xs">
            {backups.map((name) => (
              <Radio key={name} value={name} label={name} />
            ))}
          </Stack>
        </ScrollArea.Autosize>
      </Radio.Group>
      <Group mt="sm">
        <Button loading={busy} disabled={chosen === ''} onClick={() => onRestore(chosen)}>
          Restore this backup
        </Button>
      </Group>
    </Panel>
  );
}
