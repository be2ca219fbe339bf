import { Button, Group } from '@mantine/core';

interface EditButtonsProps {
  action: string;
  busy: boolean;
  onCancel?: (() => void) | undefined;
}

/** Save and cancel under a form. */
export function EditButtons({ action, busy, onCancel }: EditButtonsProps) {
  return (
    <Group mt="md">
      <Button type="submit" loading={busy}>
        {action}
      </Button>
      {onCancel === undefined ? null : (
        <Button variant="default" onClick={onCancel}>
          Cancel
        </Button>
      )}
    </Group>
  );
}
