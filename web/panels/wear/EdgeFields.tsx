import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { BlendField, type MarkFieldsProps } from './BlendField.tsx';
import { faceNumbers, faceRanges } from './face-words.ts';
import { ProfileChart } from './ProfileChart.tsx';
import { type Profile, withoutPoint, withPoint, withPointAdded } from './profile-edits.ts';
import './EdgeFields.css';

type Edge = Extract<MarkFile, { readonly kind: 'edge' }>;

/** How far an edge is eaten back along it: a curve to be drawn, and its points in numbers. */
export function EdgeFields({ mark, part, path, edit }: MarkFieldsProps<Edge>) {
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [along] = faceNumbers(part, mark.face);
  const [span] = faceRanges(part, mark.face);
  const { profile } = mark;
  const put = (label: string, changed: Profile, field: string) =>
    edit(label, { ...mark, profile: changed.map(([at, loss]): [number, number] => [at, loss]) }, field);
  const add = () => {
    forgetDrafts(`${path}.profile`);
    setFaults(put('add a point to an edge', withPointAdded(profile, span), 'profile'));
  };
  const remove = (i: number) => {
    forgetDrafts(`${path}.profile`);
    setFaults(put('remove a point of an edge', withoutPoint(profile, i), 'profile'));
  };
  return (
    <>
      <ProfileChart
        profile={profile}
        span={span}
        along={along.label}
        onChange={(changed) => setFaults(put('loss along an edge', changed, 'profile'))}
      />
      <ol className="profile-points">
        {profile.map(([at, loss], i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: points have no name but their place
          <li key={i} className="profile-point">
            <QuantityField
              label={`${sentenceCase(along.label)} of point ${i + 1}`}
              quantity="length"
              path={`${path}.profile[${i}][0]`}
              value={at}
              onCommit={(value) =>
                put('place of a point', withPoint(profile, i, [value, loss]), `profile[${i}]`)
              }
            />
            <QuantityField
              label={`Loss at point ${i + 1}`}
              quantity="length"
              path={`${path}.profile[${i}][1]`}
              value={loss}
              min={0}
              step={0.5}
              onCommit={(value) =>
                put('loss at a point', withPoint(profile, i, [at, value]), `profile[${i}]`)
              }
            />
            <Button
              className="button button-bare profile-remove"
              aria-label={`Remove point ${i + 1}`}
              isDisabled={profile.length < 2}
              onPress={() => remove(i)}
            >
              <Trash2 aria-hidden="true" />
            </Button>
          </li>
        ))}
      </ol>
      <div className="buttons">
        <Button className="button" onPress={add}>
          <Plus aria-hidden="true" />
          Add a point
        </Button>
      </div>
      <Refusal faults={faults} />
      <BlendField mark={mark} edit={edit} />
    </>
  );
}
