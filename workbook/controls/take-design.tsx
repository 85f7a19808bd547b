interface TakeProps {
  /** What makes the design: "engine station −160 mm, light ply". */
  readonly title: string;
  onVariant(): void;
  onSet(): void;
  onClose(): void;
}

/** What can be done with a design that a point or a row stands for. */
export function TakeDesign({ title, onVariant, onSet, onClose }: TakeProps) {
  const done = (take: () => void) => () => {
    take();
    onClose();
  };
  return (
    <fieldset class="take-design">
      <legend>{title}</legend>
      <button type="button" class="word" onClick={done(onVariant)}>
        Take this design as a variant
      </button>
      <button type="button" class="word" onClick={done(onSet)}>
        Set the design to it
      </button>
      <button type="button" class="word quiet" onClick={onClose}>
        Close
      </button>
    </fieldset>
  );
}
