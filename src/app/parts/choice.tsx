import type { ReactNode } from 'react';
import {
  Button,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Radio,
  RadioGroup,
  Select,
  SelectValue,
} from 'react-aria-components';
import { FieldFoot } from './field-frame.tsx';

export interface Option<V extends string> {
  readonly id: V;
  readonly text: string;
  /** A line below the name, for choices that need one. */
  readonly about?: string;
}

interface ChoiceProps<V extends string> {
  readonly label: string;
  readonly value: V;
  readonly options: readonly Option<V>[];
  readonly onChange: (value: V) => void;
  readonly about?: ReactNode;
  readonly problem?: string | null;
}

/** One of a few: up to four short ones lie side by side, more open as a list. */
export function Choice<V extends string>(props: ChoiceProps<V>): ReactNode {
  const short = props.options.length <= 4 && props.options.every(({ text }) => text.length <= 18);
  return short ? <SideBySide {...props} /> : <AsList {...props} />;
}

function SideBySide<V extends string>({
  label,
  value,
  options,
  onChange,
  about,
  problem = null,
}: ChoiceProps<V>) {
  return (
    <RadioGroup
      className="field choice"
      value={value}
      onChange={(id) => onChange(id as V)}
      isInvalid={problem !== null}
      orientation="horizontal"
    >
      <Label>{label}</Label>
      <div className="choice-row">
        {options.map(({ id, text }) => (
          <Radio key={id} value={id} className="choice-one">
            {text}
          </Radio>
        ))}
      </div>
      <FieldFoot about={about} wrong={problem} />
    </RadioGroup>
  );
}

function AsList<V extends string>({
  label,
  value,
  options,
  onChange,
  about,
  problem = null,
}: ChoiceProps<V>) {
  return (
    <Select
      className="field"
      value={value}
      onChange={(chosen) => {
        // The browser's own list behind ours, which fills in by itself, has an empty choice too.
        const option = options.find(({ id }) => id === chosen);
        if (option !== undefined) onChange(option.id);
      }}
      isInvalid={problem !== null}
    >
      <Label>{label}</Label>
      <Button className="field-box select">
        <SelectValue />
        <span aria-hidden="true" className="select-sign" />
      </Button>
      <FieldFoot about={about} wrong={problem} />
      <Popover className="popover">
        <ListBox className="list-box">
          {options.map((option) => (
            <ListBoxItem key={option.id} id={option.id} textValue={option.text} className="list-item">
              <span>{option.text}</span>
              {option.about !== undefined && <span className="quiet small">{option.about}</span>}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
