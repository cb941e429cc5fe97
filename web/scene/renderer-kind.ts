/** What draws in three dimensions here: a graphics chip, the processor in its place, or nothing. */
export type RendererKind = 'chip' | 'processor' | 'none';

let known: RendererKind | undefined;

/** Asked once, with a small context that is given back at once. */
export function rendererKind(): RendererKind {
  known ??= probe();
  return known;
}

const BY_PROCESSOR = /swiftshader|llvmpipe|software|basic render/i;

function probe(): RendererKind {
  const canvas = document.createElement('canvas');
  canvas.width = 1;
  canvas.height = 1;
  const context = canvas.getContext('webgl2');
  if (context === null) return 'none';
  const named = context.getExtension('WEBGL_debug_renderer_info');
  const name: unknown = context.getParameter(named?.UNMASKED_RENDERER_WEBGL ?? context.RENDERER);
  context.getExtension('WEBGL_lose_context')?.loseContext();
  return BY_PROCESSOR.test(String(name)) ? 'processor' : 'chip';
}
