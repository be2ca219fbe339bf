import { Tabs } from '@mantine/core';
import { useSearchParams } from 'wouter';
import { useWho } from '../../api/who.ts';
import { Page } from '../../parts/page.tsx';
import { BenchPolicy } from './bench-policy.tsx';
import { CareCard } from './care-card.tsx';
import { Carriers } from './carriers.tsx';
import { DataFolder } from './data-folder.tsx';
import { FinishSystems } from './finish-systems/finish-systems.tsx';
import { Marking } from './marking.tsx';
import { People } from './people.tsx';
import { Prices } from './prices.tsx';
import { Scales } from './scales.tsx';
import { Shop } from './shop.tsx';
import { Wordings } from './wordings.tsx';

const tabs = [
  { value: 'shop', label: 'Shop', Body: Shop },
  { value: 'people', label: 'People', Body: People },
  { value: 'scales', label: 'Scales', Body: Scales },
  { value: 'bench', label: 'Weight bench', Body: BenchPolicy },
  { value: 'finishes', label: 'Finishes', Body: FinishSystems },
  { value: 'carriers', label: 'Carriers', Body: Carriers },
  { value: 'marking', label: 'Marking', Body: Marking },
  { value: 'care', label: 'Care card', Body: CareCard },
  { value: 'prices', label: 'Prices', Body: Prices },
  { value: 'wordings', label: 'Wordings', Body: Wordings },
  { value: 'data', label: 'Data folder', Body: DataFolder },
] as const;

/** The shop, its people, its scales, and where its data is. */
export function SettingsScreen() {
  const [params, setParams] = useSearchParams();
  const isOwner = useWho()?.role === 'owner';
  const wanted = params.get('tab');
  const tab = tabs.find(({ value }) => value === wanted)?.value ?? 'shop';
  return (
    <Page title="Settings">
      <Tabs
        value={tab}
        onChange={(next) => setParams({ tab: next ?? 'shop' }, { replace: true })}
        keepMounted={false}
      >
        <Tabs.List mb="md">
          {tabs.map(({ value, label }) => (
            <Tabs.Tab key={value} value={value} h={44}>
              {label}
            </Tabs.Tab>
          ))}
        </Tabs.List>
        {tabs.map(({ value, Body }) => (
          <Tabs.Panel key={value} value={value} maw={960}>
            <Body isOwner={isOwner} />
          </Tabs.Panel>
        ))}
      </Tabs>
    </Page>
  );
}
