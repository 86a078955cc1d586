# Fant 1960, figure 1.4-3, reads 260 1990 3050 Hz for [i] and 780 1240 2720 3350 Hz for [a]; the equation of the
# lossless twin tube gives 266 1970 and 770 1233 2674 3333 Hz. Columns and rows stand in any order.
$ vowelway tract data/acoustics/twin_tubes.csv --loss none --up-to 3500
i, 14.5 cm
resonance    Hz  bandwidth Hz
fR1         266             0
fR2        1970             0
fR3        3017             0
compliant load, Hz: 266..1047, 1970..2752, 3017..3283

a, 17.6 cm
resonance    Hz  bandwidth Hz
fR1         770             0
fR2        1233             0
fR3        2674             0
fR4        3333             0
...
! assumed: columns ignored: remark

$ vowelway tract data/acoustics/twin_tubes.csv --loss none --up-to 1500 --as json
{
  "vowelway": 1,
  "loss": "none",
  "tracts": [
    {
      "vowel": "i",
      "length_cm": 14.5,
      "resonances": [
        {
          "hz": 265.6,
          "bandwidth_hz": 0.0
        }
      ],
...
! assumed: columns ignored: remark
