import { Button, useComputedColorScheme, useMantineColorScheme } from '@mantine/core';
import { IconMoon, IconSun } from '@tabler/icons-react';

export function SchemeSwitch() {
  const { setColorScheme } = useMantineColorScheme();
  const scheme = useComputedColorScheme('light', { getInitialValueInEffect: false });
  const other = scheme === 'dark' ? 'light' : 'dark';
  const Icon = other === 'dark' ? IconMoon : IconSun;
  return (
    <Button
      variant="subtle"
      color="gray"
      px="sm"
      leftSection={<Icon size={20} aria-hidden="true" />}
      onClick={() => setColorScheme(other)}
      aria-label={other === 'dark' ? 'Dark colours' : 'Light colours'}
    >
      {other === 'dark' ? 'Dark' : 'Light'}
    </Button>
  );
}
