/** Units as print writes them, where a terminal has plain letters: cm2 -> cm², um -> µm, g.mm -> g·mm, +- 2 -> ± 2, 40 deg -> 40°, 20 degC -> 20 °C, -4 mm -> −4 mm. */
export function typeset(text: string): string {
  return text
    .replace(/\b(m|cm|mm)([23])\b/g, (_, unit: string, power: string) => unit + (power === '2' ? '²' : '³'))
    .replace(/\bum\b/g, 'µm')
    .replace(/\bg\.mm\b/g, 'g·mm')
    .replace(/\+- (?=\d)/g, '± ')
    .replace(/\bdegC\b/g, '°C')
    .replace(/(\d) deg\b/g, '$1°')
    .replace(/(\d) x /g, '$1 × ')
    .replace(/(^|[\s(])-(?=\d)/g, '$1−');
}
