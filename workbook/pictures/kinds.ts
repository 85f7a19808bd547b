import type { ComponentType } from 'preact';
import type { PictureProps } from './props';

/** A block that has a picture of its own: the trace that it is drawn from, and where the code is that draws it. */
export interface PictureKind {
  readonly trace: string;
  component(): Promise<ComponentType<PictureProps>>;
}

/** By kind of block. */
export const pictureKinds: Readonly<Record<string, PictureKind>> = {
  line_shape: { trace: 'line', component: async () => (await import('./lines-picture')).LinesPicture },
  control: { trace: 'linkage', component: async () => (await import('./linkage-picture')).LinkagePicture },
  tank: { trace: 'views', component: async () => (await import('./tank-picture')).TankPicture },
};
