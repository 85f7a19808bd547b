import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { TracedPlan } from '../../../engine/index';
import type { Frame } from '../../drawing/index';
import { keptPicture } from '../../store/keep/index';

/** The picture of a plan, from its file or from the browser's store; `missing` where that has it no more. */
export function usePlanImage(plan: TracedPlan | undefined): { image: string | undefined; missing: boolean } {
  const [kept, setKept] = useState<{ key: string; image: string | undefined } | undefined>(undefined);
  const key = plan && plan.image === undefined ? plan.kept : undefined;
  useEffect(() => {
    if (key === undefined) return undefined;
    let wanted = true;
    const take = (image: string | undefined): void => {
      if (wanted) setKept({ key, image });
    };
    keptPicture(key).then(take, () => take(undefined));
    return () => {
      wanted = false;
    };
  }, [key]);
  if (!plan) return { image: undefined, missing: false };
  if (plan.image !== undefined) return { image: plan.image, missing: false };
  const here = kept && kept.key === key ? kept : undefined;
  return { image: here?.image, missing: key === undefined || (here !== undefined && here.image === undefined) };
}

/** The picture under its view, to the scale of the drawing. */
export function PlanImage({
  plan,
  image,
  frame,
}: {
  plan: TracedPlan;
  image: string;
  frame: Frame;
}): JSX.Element | null {
  const view = frame.views[plan.view];
  if (!view) return null;
  const { area, origin } = view;
  const at = { x: origin.x + plan.right * frame.scale, y: origin.y + plan.down * frame.scale };
  const clip = `traced-${plan.view}-${frame.width}`;
  return (
    <g data-traced-plan clip-path={`url(#${clip})`} pointer-events="none">
      <clipPath id={clip}>
        <rect x={area.left} y={area.top} width={area.right - area.left} height={area.bottom - area.top} />
      </clipPath>
      <image
        href={image}
        x={-plan.width / 2}
        y={-plan.height / 2}
        width={plan.width}
        height={plan.height}
        opacity={plan.opacity}
        preserveAspectRatio="none"
        transform={`translate(${at.x} ${at.y}) rotate(${plan.angle}) scale(${plan.scale * frame.scale})`}
      />
    </g>
  );
}
