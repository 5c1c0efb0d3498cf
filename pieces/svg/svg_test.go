package svg

import (
	"bytes"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/pieces/svgin"
	"ellwand/pieces/words"
	"ellwand/testdata/sketch"
)

var update = flag.Bool("update", false, "write the golden files anew")

var options = found.Options{Limits: found.Limits{1 << 20, 100_000, 100_000, 60, 1000, 1000}}

// written is the document of pieces.
func written(t *testing.T, all ...pieces.Piece) string {
	t.Helper()
	var text bytes.Buffer
	require.NoError(t, Write(&text, "test", all...))
	return text.String()
}

// lines of the document, by a reader that shares nothing with the writer.
func lines(t *testing.T, text string) linework.Drawing {
	t.Helper()
	out, err := svgin.Lines([]byte(text), options)
	require.NoError(t, err)
	return out
}

// layer of the lines that are not derived from others, or of all.
func layer(d linework.Drawing, name string, derived bool) []linework.Line {
	var out []linework.Line
	for _, l := range d.Lines {
		if l.Layer == name && (derived || l.About["derived"] == "") {
			out = append(out, l)
		}
	}
	return out
}

func cuff() pieces.Piece {
	p := pieces.Rectangle("cuff", 240, 100)
	p.Garment, p.Cloth = "blouse", "shell"
	for i := range p.Edges {
		p.Edges[i].Allowance = 10
	}
	return p
}

// bodice is half a front with a curve of each kind, a dart in the waist, a
// notch, a line and a point marked.
func bodice() pieces.Piece {
	line := func(x0, y0, x1, y1 float64) pieces.Path {
		return pieces.Path{pieces.Line{From: orb.Point{x0, y0}, To: orb.Point{x1, y1}}}
	}
	return pieces.Piece{
		Name: "front", Garment: "blouse", Size: "12", Cloth: "shell", Cut: 1, Fold: seams.CentreFront,
		Edges: []pieces.Edge{
			{Name: seams.Called("waist to dart"), Path: line(0, 0, 80, 0), Allowance: 15},
			{Name: seams.Called("dart mouth"), Path: line(80, 0, 110, 0), Allowance: 15},
			{Name: seams.Waist, Path: line(110, 0, 240, 0), Allowance: 15},
			{Name: seams.SideSeam, Path: line(240, 0, 250, 220), Allowance: 15},
			{Name: seams.Armhole, Allowance: 10, Path: pieces.Path{pieces.Bezier{
				P0: orb.Point{250, 220}, P1: orb.Point{180, 220}, P2: orb.Point{170, 280}, P3: orb.Point{190, 400}}}},
			{Name: seams.Shoulder, Path: line(190, 400, 70, 440), Allowance: 15},
			{Name: seams.Neck, Allowance: 10, Path: pieces.Path{pieces.Arc{
				Centre: orb.Point{0, 440}, Radius: 70, Begin: 0, Sweep: -math.Pi / 2}}},
			{Name: seams.CentreFront, Path: line(0, 370, 0, 0)},
		},
		Grain:   pieces.Grain{From: orb.Point{30, 60}, To: orb.Point{30, 330}},
		Notches: []pieces.Notch{{Edge: seams.Armhole, At: 100, Count: 1}},
		Darts: []pieces.Dart{{Name: seams.Waist.Dart(0), Mouth: seams.Called("dart mouth"), Start: orb.Point{80, 0},
			Apex: orb.Point{95, 140}, End: orb.Point{110, 0}}},
		Marks: []pieces.Mark{{Name: marks.BustLine, Path: line(0, 200, 249, 200)},
			{Name: marks.BustPoint, At: orb.Point{95, 165}}},
	}
}

// band is two pairs with two-stroke notches and a hem.
func band() pieces.Piece {
	p := cuff()
	p.Name, p.Cut, p.Pair = "band", 4, true
	p.Edges[0].Allowance, p.Edges[0].Hem = 30, true
	p.Notches = []pieces.Notch{{Edge: seams.Top, At: 80, Count: 2}}
	p.Darts = []pieces.Dart{{Name: seams.Called("tuck"), Start: orb.Point{190, 50}, Apex: orb.Point{195, 80},
		End: orb.Point{200, 50}, OtherApex: orb.Point{195, 20}}}
	p.Grain.Lie = pieces.Bias
	return p
}

// kept is a piece by its cutting line: known on one side, unknown on another, a seam
// line on the rest.
func kept() pieces.Piece {
	p := pieces.Rectangle("flap", 140, 60)
	p.Size, p.Cut, p.Accuracy, p.Approximate, p.Kind = "38", 3, 2, true, pieces.Facing
	p.Edges[0].Included = 15
	p.Edges[1].Unknown = true
	p.Edges[2].Allowance = 10
	p.Grain.Lie = pieces.EitherGrain
	p.Notches = []pieces.Notch{{Edge: seams.Bottom, At: 70.5, Count: 1, Match: marks.Called("side & \"front\"")}}
	return p
}

// round is a disc of two edges, one of them more than half of it.
func round() pieces.Piece {
	p := cuff()
	p.Name, p.Grain = "disc", pieces.Grain{From: orb.Point{0, -20}, To: orb.Point{0, 20}}
	p.Edges = []pieces.Edge{
		{Name: seams.Hem, Path: pieces.Path{pieces.Arc{Radius: 70, Begin: 0, Sweep: 1.5 * math.Pi}}, Allowance: 10},
		{Name: seams.Waist, Path: pieces.Path{pieces.Arc{Radius: 70, Begin: 1.5 * math.Pi, Sweep: 0.5 * math.Pi}},
			Allowance: 10},
	}
	return p
}

func TestWriteGolden(t *testing.T) {
	got := written(t, bodice(), band(), cuff())
	golden := filepath.Join("testdata", "three.svg")
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	assert.Equal(t, string(want), got)
}

// What is read back is what was written, but for the garment and what was rounded;
// written again it is the same to the last byte.
func TestRoundTrip(t *testing.T) {
	all := []pieces.Piece{bodice(), band(), cuff(), kept(), round()}
	first := written(t, all...)
	back, err := Read(lines(t, first))
	require.NoError(t, err)
	require.Len(t, back, len(all))
	for i, p := range all {
		got := back[i]
		assert.Less(t, sketch.Apart(p.Boundary(0.001), got.Boundary(0.001)), 0.0015, p.Name)
		for k := range p.Edges {
			want := p.Edges[k]
			assert.InDelta(t, want.Path.Length(), got.Edges[k].Path.Length(), 0.001)
			want.Path, got.Edges[k].Path = nil, nil
			assert.Equal(t, want, got.Edges[k])
		}
		p.Edges, got.Edges, p.Garment = nil, nil, ""
		for _, one := range []*pieces.Piece{&p, &got} {
			for k := range one.Marks {
				one.Marks[k].Path = nil
			}
		}
		assert.Equal(t, fmt.Sprintf("%.6v", p), fmt.Sprintf("%.6v", got))
	}
	back, err = Read(lines(t, first))
	require.NoError(t, err)
	second := written(t, back...)
	back, err = Read(lines(t, second))
	require.NoError(t, err)
	assert.Equal(t, second, written(t, back...))
}

// By SVG 1.1, section 7.2, a width in mm and a viewBox of as many units make
// a unit a millimetre.
func TestWriteIsToScale(t *testing.T) {
	text := written(t, cuff())
	assert.Contains(t, text, `width="284mm" height="162mm" viewBox="0 0 284 162"`)
	cutting := layer(lines(t, text), "cut", true)
	require.Len(t, cutting, 1)
	box := cutting[0].Path.Flatten(0.01).Bound()
	assert.InDeltaSlice(t, []float64{12, 30, 272, 150}, []float64{box.Min[0], box.Min[1], box.Max[0], box.Max[1]}, 1e-9)
	var ruler []linework.Line
	for _, l := range layer(lines(t, text), "words", true) {
		if l.Path.Length() > 50 {
			ruler = append(ruler, l)
		}
	}
	require.Len(t, ruler, 1)
	assert.InDelta(t, 100, ruler[0].Path.Length(), 1e-9)
}

// Each layer holds what it is named by.
func TestWriteLayers(t *testing.T) {
	p := cuff()
	p.Fold, p.Edges[3].Allowance = seams.Left, 0
	p.Notches = []pieces.Notch{{Edge: seams.Bottom, At: 100, Count: 2}}
	d := lines(t, written(t, p))
	cutting := layer(d, "cut", true)
	require.Len(t, cutting, 1)
	assert.False(t, cutting[0].Closed, "open along the fold")
	assert.Len(t, layer(d, "sew", true), 3)
	assert.Len(t, layer(d, "marks", false), 1+2+1, "the fold, two strokes, the grainline")
	assert.Equal(t, "grain", layer(d, "marks", false)[3].Name)
	var words []string
	for _, w := range d.Words {
		assert.Equal(t, "words", w.Layer)
		words = append(words, w.Text)
	}
	assert.Subset(t, words, []string{"cuff", "blouse", "cut 1 on fold, from shell", "on the fold",
		"straight grain, this end up"})
}

func TestWriteKeepsCurvesExact(t *testing.T) {
	text := written(t, bodice())
	assert.Contains(t, text, "M250 220C180 220 170 280 190 400")
	assert.Contains(t, text, "M70 440A70 70 0 0 0 0 370")
}

// Every drawing keeps to its own box, and boxes do not overlap.
func TestWriteLaysPiecesApart(t *testing.T) {
	all := []pieces.Piece{bodice(), cuff(), band(), bodice(), cuff(), bodice(), bodice(), bodice()}
	for i := range all {
		all[i].Name = fmt.Sprint(all[i].Name, i)
	}
	d := lines(t, written(t, all...))
	cutting := layer(d, "cut", true)
	require.Len(t, cutting, len(all))
	rows := map[float64]bool{}
	for i, l := range cutting {
		a := l.Path.Flatten(0.01).Bound()
		rows[math.Round(a.Max[1])] = true
		assert.True(t, geometry.Holds(d.Pages[0].Box.Pad(-11.9), a), "piece %d on the sheet", i)
		for _, other := range cutting[:i] {
			assert.False(t, a.Intersects(other.Path.Flatten(0.01).Bound()))
		}
	}
	assert.Greater(t, len(rows), 1, "more than one row")
}

func TestWriteEscapesNames(t *testing.T) {
	p := cuff()
	p.Name = "<cuff & \"band\">\x00\ufffe"
	back, err := Read(lines(t, written(t, p)))
	require.NoError(t, err)
	assert.Equal(t, `<cuff & "band">`, back[0].Name)
}

func TestWriteRefuses(t *testing.T) {
	assert.ErrorContains(t, Write(io.Discard, "none"), "there is no piece to draw")
	bad := cuff()
	bad.Edges[1].Allowance = -20
	var out bytes.Buffer
	err := Write(&out, "bad", cuff(), bad)
	assert.ErrorIs(t, err, pieces.Fault{Of: pieces.AllowanceNegative, Piece: "cuff", Edge: seams.Right, Length: -20})
	assert.Zero(t, out.Len(), "nothing is written")
}

// What somebody changed in a drawing counts, and what was spoilt is refused.
func TestReadChanged(t *testing.T) {
	text := written(t, band())
	moved := strings.Replace(text, `data-included=""`, "", 1)
	moved = strings.ReplaceAll(moved, "M0 0L240 0", "M0 0L120 -8L240 0")
	back, err := Read(lines(t, moved))
	require.NoError(t, err)
	assert.InDelta(t, 240*100+240*8/2, geometry.Area(back[0].Boundary(0.01)), 0.1)
	for from, want := range map[string]string{
		`data-cut="4"`:        `piece "band": data-cut="x" cannot be read`,
		`data-allowance="30"`: "the allowance of edge \"bottom\" is no length",
		`data-at="80"`:        "the place of a notch",
		`data-strokes="2"`:    "the strokes of a notch",
	} {
		key, _, _ := strings.Cut(from, "=")
		require.Contains(t, text, from)
		_, err := Read(lines(t, strings.ReplaceAll(text, from, key+`="x"`)))
		assert.ErrorContains(t, words.Refused(err), want, from)
	}
	_, err = Read(lines(t, strings.ReplaceAll(text, `data-edge="top"`, `data-gone="top"`)))
	assert.Error(t, err, "an edge is missing")
	assert.False(t, IsOwn(lines(t, strings.Replace(text, `data-pieces="1"`, `data-pieces="9"`, 1))))
}

func BenchmarkWrite(b *testing.B) {
	for b.Loop() {
		var out bytes.Buffer
		if err := Write(&out, "front", bodice()); err != nil || out.Len() < 2000 {
			b.Fatal(err, out.Len())
		}
	}
}
