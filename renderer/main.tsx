import '@mantine/core/styles.css';
import '@mantine/notifications/styles.css';
import './styles/global.css';
import { MantineProvider } from '@mantine/core';
import { Notifications } from '@mantine/notifications';
import { QueryClientProvider } from '@tanstack/react-query';
import { createRoot } from 'react-dom/client';
import { queryClient } from './api/queries.ts';
import { App } from './app.tsx';
import { theme, variables } from './theme.ts';

const root = document.getElementById('root');
if (root !== null) {
  createRoot(root).render(
    <MantineProvider theme={theme} cssVariablesResolver={variables} defaultColorScheme="auto">
      <QueryClientProvider client={queryClient}>
        <Notifications position="bottom-right" />
        <App />
      </QueryClientProvider>
    </MantineProvider>,
  );
}
