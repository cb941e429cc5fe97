/** Patterns that tell the parts apart, over the colour of a bar, and the night from a break. */
export function Textures() {
  return (
    <defs>
      <pattern
        id="texture-stripes"
        className="texture"
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M0 0H6V3H0Z" />
      </pattern>
      <pattern id="texture-dots" className="texture" width="6" height="6" patternUnits="userSpaceOnUse">
        <circle cx="3" cy="3" r="1.6" />
      </pattern>
      <pattern id="texture-weave" className="texture" width="8" height="8" patternUnits="userSpaceOnUse">
        <path d="M0 0H8V2H0ZM0 0V8H2V0Z" />
      </pattern>
      <pattern
        id="texture-night"
        className="texture-night"
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(-45)"
      >
        <path d="M0 0H8V1.5H0Z" />
      </pattern>
    </defs>
  );
}
