import { Button, Group, TextInput } from '@mantine/core';
import { useState } from 'react';
import { Panel } from '../../parts/panel.tsx';

interface ChooseFolderProps {
  busy: boolean;
  onChoose: (folder: string) => void;
}

/** Another data folder: typed, or picked where the desktop window offers a dialog. */
export function ChooseFolder({ busy, onChoose }: ChooseFolderProps) {
  const [folder, setFolder] = useState('');
  const pick = async () => {
    const picked = await window.tillermarkDesktop?.chooseFolder();
    if (picked != null) setFolder(picked);
  };
  return (
    <Panel title="Use another folder">
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (folder.trim() !== '') onChoose(folder.trim());
        }}
      >
        <TextInput
          label="Full path of the folder"
          description="The folder that holds the shop, or an empty one for a new shop."
          value={folder}
          autoComplete="off"
          onChange={(event) => setFolder(event.currentTarget.value)}
        />
        <Group mt="sm">
          {window.tillermarkDesktop === undefined ? null : (
            <Button variant="default" onClick={() => void pick()}>
              Pick a folder ...
            </Button>
          )}
          <Button type="submit" variant="default" loading={busy} disabled={folder.trim() === ''}>
            Open this folder
          </Button>
        </Group>
      </form>
    </Panel>
  );
}
