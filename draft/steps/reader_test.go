package steps

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces/measure"
)

// redrawn is a piece as somebody draws it who has only the text of the sheet,
// and rounds as it does. slack is how far roundings may have moved a point.
type redrawn struct {
	unit    measure.Unit
	step    float64 // half the rounding of a length
	at      map[int]orb.Point
	slack   map[int]float64
	outline []stroke
	curves  []stroke
}

// stroke is a line from point to point; offs are how far a curve lies inward
// at a quarter, half and three quarters of the way.
type stroke struct {
	name     string
	from, to int
	offs     []float64
}

// readSheet reads the pieces of a draft sheet in text; their names are
// underlined.
func readSheet(t *testing.T, text string, unit measure.Unit) map[string]*redrawn {
	out := map[string]*redrawn{}
	var piece *redrawn
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		switch {
		case i > 0 && line != "" && strings.Trim(line, "-") == "":
			piece = &redrawn{unit: unit, step: 0.5, at: map[int]orb.Point{}, slack: map[int]float64{}}
			if unit == measure.Inch {
				piece.step = 25.4 / 32
			}
			out[lines[i-1]] = piece
		case piece == nil:
		case numbered.MatchString(line):
			piece.read(t, numbered.FindStringSubmatch(line)[1])
		case curved.MatchString(line):
			piece.curve(t, curved.FindStringSubmatch(line))
		}
	}
	return out
}

var (
	numbered = regexp.MustCompile(`^ *\d+\. (.*)$`)
	curved   = regexp.MustCompile(`^  (\D+) (\d+)-(\d+), (\S.*?) straight: (.*)$`)
	arcText  = regexp.MustCompile(`^an arc of radius (.*), in the middle (.*)$`)
	seamText = regexp.MustCompile(`^(\D+) ([\d-]+)$`)
)

// sentences that set a point; the lengths are read back from their words.
var sentences = []struct {
	words *regexp.Regexp
	set   func(r *redrawn, t *testing.T, m []string)
}{
	{regexp.MustCompile(`^square across from (\d+) to the (left|right) by (\S.*?) and (up|down) by (\S.*?) to (\d+)\b`),
		func(r *redrawn, t *testing.T, m []string) {
			from := r.at[atoi(t, m[1])]
			r.set(t, m[6], orb.Point{from[0] + sign(m[2])*r.length(t, m[3]), from[1] + sign(m[4])*r.length(t, m[5])}, 1.5,
				m[1])
		}},
	{regexp.MustCompile(`^square (up|down|across) from (\d+)(?: to the (left|right))? by (\S.*?) to (\d+)\b`),
		func(r *redrawn, t *testing.T, m []string) {
			at, by := r.at[atoi(t, m[2])], r.length(t, m[4])
			if m[1] == "across" {
				at[0] += sign(m[3]) * by
			} else {
				at[1] += sign(m[1]) * by
			}
			r.set(t, m[5], at, 1.5, m[2])
		}},
	{regexp.MustCompile(`^from (\d+) draw a line of (\S.*?) to (\d+): .*falling ([\d.]+) in (\d)`),
		func(r *redrawn, t *testing.T, m []string) {
			fall, err := strconv.ParseFloat(m[4], 64)
			require.NoError(t, err)
			run := float64(atoi(t, m[5]))
			way := construct.Direction(orb.Point{}, orb.Point{run, -fall})
			r.set(t, m[3], construct.Go(r.at[atoi(t, m[1])], way, r.length(t, m[2])), 1, m[1])
		}},
	{regexp.MustCompile(`^from (\d+) draw a line of (\S.*?) that is level with (\d+) at its end, (\d+): the (front|` +
		`back)`), func(r *redrawn, t *testing.T, m []string) {
		from, level, line := r.at[atoi(t, m[1])], r.at[atoi(t, m[3])], r.length(t, m[2])
		run := math.Sqrt(line*line - math.Pow(from[1]-level[1], 2))
		x := from[0] + map[string]float64{"front": run, "back": -run}[m[5]]
		r.set(t, m[4], orb.Point{x, level[1]}, 2, m[1], m[3])
	}},
	{regexp.MustCompile(`^on the line (\d+)-(\d+), (\S.*?) from (\d+), mark (\d+)`),
		func(r *redrawn, t *testing.T, m []string) {
			r.set(t, m[5], construct.Toward(r.at[atoi(t, m[1])], r.at[atoi(t, m[2])], r.length(t, m[3])), 1, m[1], m[2])
		}},
	{regexp.MustCompile(`^at the middle of (\d+)-(\d+) square out by (\S.*?) to (\d+): (bulge|hollow)`),
		func(r *redrawn, t *testing.T, m []string) {
			a, b := r.at[atoi(t, m[1])], r.at[atoi(t, m[2])]
			square := construct.Square(construct.Direction(a, b))
			if square[1] < 0 == (m[5] == "bulge") {
				square = construct.Back(square)
			}
			r.set(t, m[4], construct.Go(construct.Between(a, b, 0.5), square, r.length(t, m[3])), 1, m[1], m[2])
		}},
	{regexp.MustCompile(`^swing (\d+) about (\d+) (clockwise|counter-clockwise) by (\S.*?) to (\d+)`),
		func(r *redrawn, t *testing.T, m []string) {
			p, centre := r.at[atoi(t, m[1])], r.at[atoi(t, m[2])]
			degrees := 2 * math.Asin(r.length(t, m[4])/2/construct.Distance(p, centre)) * 180 / math.Pi
			if m[3] == "clockwise" {
				degrees = -degrees
			}
			r.set(t, m[5], construct.Turning(centre, degrees).Apply(p), 1.5, m[1], m[2])
		}},
	{regexp.MustCompile(`^mark (\d+):`), func(r *redrawn, t *testing.T, m []string) { r.set(t, m[1], orb.Point{}, 0) }},
}

func (r *redrawn) read(t *testing.T, text string) {
	if rest, ok := strings.CutPrefix(text, "go over the outline: "); ok {
		for _, words := range strings.Split(rest, ", ") {
			m := seamText.FindStringSubmatch(words)
			require.NotNil(t, m, words)
			r.addStrokes(t, m[1], strings.Split(m[2], "-"))
		}
		return
	}
	for _, s := range sentences {
		if m := s.words.FindStringSubmatch(text); m != nil {
			s.set(r, t, m)
			return
		}
	}
}

func (r *redrawn) addStrokes(t *testing.T, name string, numbers []string) {
	for i := 1; i < len(numbers); i++ {
		r.outline = append(r.outline, stroke{name: name, from: atoi(t, numbers[i-1]), to: atoi(t, numbers[i])})
	}
}

// set puts a point down. Each of its lengths may be off by half a rounding,
// and so may the points that it is set from.
func (r *redrawn) set(t *testing.T, number string, at orb.Point, roundings float64, from ...string) {
	n := atoi(t, number)
	require.NotContains(t, r.at, n, "point %d is set twice", n)
	slack := 0.0
	for _, f := range from {
		require.Contains(t, r.at, atoi(t, f), "point %d is set from one that is not there", n)
		slack = max(slack, r.slack[atoi(t, f)])
	}
	r.at[n], r.slack[n] = at, slack+roundings*r.step
}

func (r *redrawn) curve(t *testing.T, m []string) {
	c := stroke{name: m[1], from: atoi(t, m[2]), to: atoi(t, m[3])}
	if arc := arcText.FindStringSubmatch(m[5]); arc != nil {
		chord, middle := r.length(t, m[4]), r.off(t, arc[2])
		// A quarter of the way along its chord an arc lies higher than a straight
		// line from end to middle: by the circle of that radius (geometry).
		radius := (chord*chord/4 + middle*middle) / 2 / math.Abs(middle)
		quarter := math.Copysign(math.Sqrt(radius*radius-chord*chord/16)-(radius-math.Abs(middle)), middle)
		c.offs = []float64{quarter, middle, quarter}
	} else {
		words := strings.Split(m[5], ", ")
		require.Len(t, words, 3, m[0])
		for _, off := range words {
			if !strings.Contains(off, "ward") && off != "on the line" {
				off += words[2][strings.LastIndex(words[2], " "):]
			}
			c.offs = append(c.offs, r.off(t, off))
		}
	}
	r.curves = append(r.curves, c)
}

// off reads "1.2 cm outward" as -12.
func (r *redrawn) off(t *testing.T, words string) float64 {
	if words == "on the line" {
		return 0
	}
	if rest, ok := strings.CutSuffix(words, " outward"); ok {
		return -r.length(t, rest)
	}
	return r.length(t, strings.TrimSuffix(words, " inward"))
}

func (r *redrawn) length(t *testing.T, words string) float64 {
	l, err := measure.Parse(words, r.unit)
	require.NoError(t, err, words)
	return float64(l)
}

func sign(way string) float64 {
	if way == "left" || way == "down" {
		return -1
	}
	return 1
}

func atoi(t *testing.T, number string) int {
	n, err := strconv.Atoi(number)
	require.NoError(t, err)
	return n
}

// marks are where a stroke passes: its ends, and a curve at three places.
func (r *redrawn) marks(s stroke) []orb.Point {
	a, b := r.at[s.from], r.at[s.to]
	out := []orb.Point{a, b, construct.Between(a, b, 0.5)}
	c, ok := r.curveOf(s)
	if !ok {
		return out
	}
	out = out[:2]
	for i, off := range c.offs {
		square := construct.Square(construct.Direction(a, b))
		out = append(out, construct.Go(construct.Between(a, b, float64(i+1)/4), square, off))
	}
	return out
}

// curveOf is the curve between the two points of a stroke.
func (r *redrawn) curveOf(s stroke) (stroke, bool) {
	for _, c := range r.curves {
		if c.from == s.from && c.to == s.to {
			return c, true
		}
	}
	return stroke{}, false
}
