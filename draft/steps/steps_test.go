package steps

import (
	"bytes"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/straightcut"
	"ellwand/draft/trousers"
	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// garments that use every block.
func garments(t testing.TB, size string) []Garment {
	body, err := draft.Size("women", size)
	require.NoError(t, err)
	var out []Garment
	for _, request := range []draft.Request{
		{Garment: "blouse", Bodice: &bodice.Options{Fit: bodice.Easy}, Sleeve: &sleeve.Options{}, Parts: []part.Options{{Kind: part.Collar}, {Kind: part.Cuff}, {Kind: part.NeckFacing}}},
		{Garment: "dress", Bodice: &bodice.Options{Shaping: bodice.ShoulderDart}, Skirt: &skirt.Options{Shape: skirt.ALine}},
		{Garment: "circle", Skirt: &skirt.Options{Shape: skirt.HalfCircle}, Parts: []part.Options{{Kind: part.ShapedWaistband}}},
		{Garment: "trousers", Trousers: &trousers.Options{Pocket: trousers.SidePocket}},
		{Garment: "shirt", Bodice: &bodice.Options{FrontOpening: true, BackOnFold: true}, Parts: []part.Options{{Kind: part.ShirtCollar}, {Kind: part.MandarinCollar}, {Kind: part.ButtonedCuff}, {Kind: part.FlatCollar}, {Kind: part.ArmholeFacing}}},
		{Garment: "kaftan", StraightCut: &straightcut.Options{Shape: straightcut.Kaftan}},
	} {
		request.Body, request.Cloth = body, "shell"
		result, err := draft.Draft(request)
		require.NoError(t, err)
		out = append(out, Garment{request.Garment, result.Body, result.Pieces, result.Sheets, result.Truing})
	}
	return out
}

// Somebody who has only the sentences, and rounds as they do, gets every point
// to within a few roundings of where it was drafted.
func TestPointsCanBeDrawnFromTheWords(t *testing.T) {
	for unit, far := range map[measure.Unit]float64{measure.Centimetre: 3, measure.Inch: 5} {
		for _, garment := range garments(t, "12") {
			for _, c := range garment.contents(unit) {
				drawn := drawFromWords(t, c, unit)
				for _, p := range c.sheet.Points {
					require.Contains(t, drawn, p.Number, "%s: point %d", c.head, p.Number)
					assert.InDelta(t, 0, construct.Distance(p.At, drawn[p.Number]), far, "%s: point %d in %s", c.head, p.Number, unit)
				}
			}
		}
	}
}

// sentences that set a point; the lengths are read back from their words.
var sentences = map[string]*regexp.Regexp{
	"square": regexp.MustCompile(`^square (up|down|across) from (\d+)(?: to the (left|right))? by (\S.*?) to (\d+)\b`),
	"corner": regexp.MustCompile(`^square across from (\d+) to the (left|right) by (\S.*?) and (up|down) by (\S.*?) to (\d+)\b`),
	"slope":  regexp.MustCompile(`^from (\d+) draw a line of (\S.*?) to (\d+): .*falling (\d) in (\d)`),
	"reach":  regexp.MustCompile(`^from (\d+) draw a line of (\S.*?) that is level with (\d+) at its end, (\d+): the (front|back)`),
	"along":  regexp.MustCompile(`^on the line (\d+)-(\d+), (\S.*?) from (\d+), mark (\d+)`),
	"out":    regexp.MustCompile(`^at the middle of (\d+)-(\d+) square out by (\S.*?) to (\d+): (bulge|hollow)`),
	"swing":  regexp.MustCompile(`^swing (\d+) about (\d+) (clockwise|counter-clockwise) by (\S.*?) to (\d+)`),
	"mark":   regexp.MustCompile(`^mark (\d+):`),
}

func drawFromWords(t *testing.T, c content, unit measure.Unit) map[int]orb.Point {
	at := map[int]orb.Point{}
	point := func(number string) orb.Point { return at[atoi(t, number)] }
	length := func(words string) float64 {
		l, err := measure.Parse(words, unit)
		require.NoError(t, err, words)
		return float64(l)
	}
	for _, step := range c.steps {
		if m := sentences["corner"].FindStringSubmatch(step); m != nil {
			x, y := sign(m[2])*length(m[3]), sign(m[4])*length(m[5])
			at[atoi(t, m[6])] = orb.Point{point(m[1])[0] + x, point(m[1])[1] + y}
		} else if m := sentences["square"].FindStringSubmatch(step); m != nil {
			from, by := point(m[2]), length(m[4])
			if m[1] == "across" {
				at[atoi(t, m[5])] = orb.Point{from[0] + sign(m[3])*by, from[1]}
			} else {
				at[atoi(t, m[5])] = orb.Point{from[0], from[1] + sign(m[1])*by}
			}
		} else if m := sentences["slope"].FindStringSubmatch(step); m != nil {
			fall, run := float64(atoi(t, m[4])), float64(atoi(t, m[5]))
			at[atoi(t, m[3])] = construct.Go(point(m[1]), construct.Direction(orb.Point{}, orb.Point{run, -fall}), length(m[2]))
		} else if m := sentences["reach"].FindStringSubmatch(step); m != nil {
			from, level, line := point(m[1]), point(m[3]), length(m[2])
			run := math.Sqrt(line*line - math.Pow(from[1]-level[1], 2))
			at[atoi(t, m[4])] = orb.Point{from[0] + map[string]float64{"front": run, "back": -run}[m[5]], level[1]}
		} else if m := sentences["along"].FindStringSubmatch(step); m != nil {
			at[atoi(t, m[5])] = construct.Toward(point(m[1]), point(m[2]), length(m[3]))
		} else if m := sentences["out"].FindStringSubmatch(step); m != nil {
			a, b := point(m[1]), point(m[2])
			square := construct.Square(construct.Direction(a, b))
			if square[1] < 0 == (m[5] == "bulge") {
				square = construct.Back(square)
			}
			at[atoi(t, m[4])] = construct.Go(construct.Between(a, b, 0.5), square, length(m[3]))
		} else if m := sentences["swing"].FindStringSubmatch(step); m != nil {
			p, centre := point(m[1]), point(m[2])
			degrees := 2 * math.Asin(length(m[4])/2/construct.Distance(p, centre)) * 180 / math.Pi
			if m[3] == "clockwise" {
				degrees = -degrees
			}
			at[atoi(t, m[5])] = construct.Turning(centre, degrees).Apply(p)
		} else if m := sentences["mark"].FindStringSubmatch(step); m != nil {
			at[atoi(t, m[1])] = c.sheet.Points[atoi(t, m[1])-1].At
		}
	}
	return at
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

// A quarter of a circle of radius r lies r (1 - 1 / sqrt 2) off its chord in
// the middle (geometry); at a quarter of the chord, r (sqrt(1 - 1/8) - 1/sqrt 2).
func TestOffChord(t *testing.T) {
	arc := pieces.Arc{Radius: 100, Begin: 0, Sweep: math.Pi / 2}
	offs := offChord(arc)
	quarter := 100 * (math.Sqrt(7./8) - math.Sqrt(0.5))
	assert.InDelta(t, -quarter, offs[0], 0.05)
	assert.InDelta(t, -100*(1-math.Sqrt(0.5)), offs[1], 0.05)
	assert.InDelta(t, -quarter, offs[2], 0.05)
	assert.Equal(t, "2.3 cm, 2.9 cm, 2.3 cm outward", offsText(offs, measure.Centimetre))
	assert.Equal(t, "1/2 in inward, on the line, 3/8 in outward", offsText([3]float64{12.7, 0.2, -9.5}, measure.Inch))
}

// Every piece has its page, steps, and seams; the same document gives the same
// bytes.
func TestDocuments(t *testing.T) {
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		d := Document{Title: "Test", Unit: unit, Garments: garments(t, "18")}
		var text, first, second bytes.Buffer
		require.NoError(t, WriteText(&text, d))
		require.NoError(t, WritePDF(&first, d, A4))
		require.NoError(t, WritePDF(&second, d, A4))
		assert.Equal(t, first.Bytes(), second.Bytes())
		for _, garment := range d.Garments {
			for _, c := range garment.contents(unit) {
				assert.NotEmpty(t, c.steps, c.head)
				assert.Len(t, c.seams, len(seamsOf(c.piece, unit)), c.head)
				assert.Contains(t, text.String(), "\n"+c.head+"\n")
			}
		}
		assert.Equal(t, unit == measure.Inch, !strings.Contains(text.String(), " cm"), "one unit in all of it")
		assert.NotContains(t, text.String(), "{}")
		assert.NotContains(t, text.String(), "%!")
	}
}
