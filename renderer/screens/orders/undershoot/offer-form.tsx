import { Radio, Textarea } from '@mantine/core';
import { useState } from 'react';
import type { Changed } from '../../../../shared/fields.ts';
import {
  type UndershootOffer,
  undershootOffer,
  undershootOfferLabels,
  undershootOffers,
} from '../../../../shared/undershoot.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { MoneyField } from '../facts/money-field.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { offerErrors } from './offer-errors.ts';
import { offerMeanings } from './offer-words.ts';

interface OfferFormProps {
  onDone: () => void;
  /** The offer was written down. */
  onOffered: (offer: Changed) => void;
}

/** Three plain choices for a bow that came out too light. */
export function OfferForm({ onDone, onOffered }: OfferFormProps) {
  const { order } = useOrder();
  const [offer, setOffer] = useState<UndershootOffer | null>(null);
  const [lowerCents, setLowerCents] = useState<number | null>(null);
  const [words, setWords] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.undershoot.propose, onOffered);
  const errors = isTried ? offerErrors({ offer, lowerCents, words }) : {};
  return (
    <FormBox
      title="What the shop offers"
      submitLabel="Write the offer down"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        const wrong = offerErrors({ offer, lowerCents, words });
        if (offer === null || Object.keys(wrong).length > 0) return;
        const priceChangeCents = offer === 'accept' ? 0 : 0 - (lowerCents ?? 0);
        void command.run({ orderId: order.card.id, offer, priceChangeCents, words });
      }}
    >
      <Radio.Group
        size="md"
        label="Weight that is gone cannot be put back. What is offered?"
        required
        value={offer}
        error={errors.offer ?? command.details.offer}
        onChange={(value) => setOffer(undershootOffer.parse(value))}
      >
        {undershootOffers.map((value) => (
          <Radio
            key={value}
            value={value}
            label={undershootOfferLabels[value]}
            description={offerMeanings[value]}
          />
        ))}
      </Radio.Group>
      {offer === 'price' || offer === 'remedy' ? (
        <MoneyField
          label={offer === 'price' ? 'Price falls by' : 'Price falls by (may stay empty)'}
          value={lowerCents}
          onChange={setLowerCents}
          error={errors.lowerCents ?? command.details.priceChangeCents}
        />
      ) : null}
      {offer === null ? null : (
        <Textarea
          label={offer === 'remedy' ? 'The offer in words' : 'Anything to add'}
          description="The customer reads these words."
          required={offer === 'remedy'}
          autosize
          minRows={2}
          maxLength={2000}
          value={words}
          error={errors.words ?? command.details.words}
          onChange={(event) => setWords(event.currentTarget.value)}
        />
      )}
    </FormBox>
  );
}
