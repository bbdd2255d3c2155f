import type { Handle, Setting } from '@boothwright/language/protocol';
import { useRef } from 'preact/hooks';

export interface SlidersProps {
  readonly handles: readonly Handle[];
  /** Where the thumb is that is being moved, until the drawing shows what was written. */
  readonly sliding: Setting | undefined;
  readonly onTry: (setting: Setting) => void;
  readonly onSet: (setting: Setting) => void;
  readonly onCancel: () => void;
}

/** Keys that follow each other faster than this write one change, in milliseconds. */
const PAUSE = 700;

/** Heights to try: the drawings follow the thumb, the text is written when it is let go. */
export function Sliders(props: SlidersProps) {
  if (props.handles.length === 0) return null;
  return (
    <fieldset class="sliders">
      <legend>Try a height</legend>
      {props.handles.map((handle) => (
        <Slider key={handle.id} handle={handle} {...props} />
      ))}
    </fieldset>
  );
}

function Slider({ handle, sliding, onTry, onSet, onCancel }: { handle: Handle } & SlidersProps) {
  const { id, says, value, told, min, max, step } = handle;
  const waiting = useRef(0);
  const byKey = useRef(false);
  const isUnwritten = useRef(false);
  const now = sliding?.handle === id ? sliding.value : undefined;
  const setting = (event: Event): Setting => ({
    handle: id,
    value: Number((event.currentTarget as HTMLInputElement).value),
  });
  const write = (wanted: Setting) => {
    clearTimeout(waiting.current);
    isUnwritten.current = false;
    onSet(wanted);
  };
  const writeNow = () => isUnwritten.current && now !== undefined && write({ handle: id, value: now });
  return (
    <label>
      <span>{says}</span>
      <input
        type="range"
        min={Math.ceil(min / step) * step}
        max={max}
        step={step}
        value={now ?? value}
        aria-valuetext={told}
        onPointerDown={() => (byKey.current = false)}
        onKeyDown={(event) => {
          byKey.current = true;
          if (event.key === 'Escape' && isUnwritten.current) {
            clearTimeout(waiting.current);
            isUnwritten.current = false;
            onCancel();
          }
          if (event.key === 'Enter') writeNow();
          if (/^(Arrow|Page|Home|End|Escape|Enter)/.test(event.key)) event.stopPropagation();
        }}
        onInput={(event) => {
          isUnwritten.current = true;
          onTry(setting(event));
        }}
        onChange={(event) => {
          const wanted = setting(event);
          if (!byKey.current) return write(wanted);
          clearTimeout(waiting.current);
          waiting.current = window.setTimeout(() => write(wanted), PAUSE);
        }}
        onBlur={writeNow}
      />
      <output>{told}</output>
    </label>
  );
}
