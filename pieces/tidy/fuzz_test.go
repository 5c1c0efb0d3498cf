package tidy

import (
	"encoding/binary"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
	"ellwand/testdata/sample"
)

// Lines at random, on sheets, with pens and dashes, end in a drawing or in a sentence.
func FuzzDrawing(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add([]byte("0123456789abcdefghijklmnopqrstuvwxyz0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"), uint8(2), uint8(1))
	f.Add([]byte{0, 0, 0, 0, 0, 90, 0, 90, 1, 0, 0, 90, 0, 90, 0, 0, 1, 0}, uint8(1), uint8(0))
	f.Fuzz(func(t *testing.T, data []byte, sheets, view uint8) {
		from := linework.Drawing{}
		for range sheets%6 + 1 {
			from.Pages = append(from.Pages, linework.Page{Box: orb.Bound{Max: orb.Point{255, 255}}})
		}
		for len(data) >= 9 && len(from.Lines) < 200 {
			from.Lines = append(from.Lines, lineOf(data[:9], len(from.Pages)))
			data = data[9:]
		}
		o := options
		if view&1 != 0 {
			o.View.Lines = []int{1}
		}
		if view&2 != 0 {
			o.View.Square = 100
		}
		if view&4 != 0 {
			o.View.Rows, o.View.OverlapSaid = [][]int{{1, 2}, {3, 0}}, true
		}
		o.View.ByGroup = view&8 != 0
		out, err := Drawing(from, o)
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		for _, p := range out.Pieces {
			require.NotEmpty(t, p.Outline)
			_, _, _ = found.Clean(p, o)
		}
	})
}

func lineOf(b []byte, sheets int) linework.Line {
	at := func(i int) orb.Point { return orb.Point{float64(b[i]), float64(b[i+1])} }
	line := linework.Line{Group: -1, Page: int(b[8]>>4) % sheets, Pen: linework.Pen{Colour: "#000000",
		Width: float64(b[8]&3) / 2}}
	if b[8]&4 != 0 {
		line.Path = pieces.Path{pieces.Bezier{P0: at(0), P1: at(2), P2: at(4), P3: at(6)}}
	} else {
		line.Path = pieces.Path{pieces.Line{From: at(0), To: at(2)}, pieces.Line{From: at(2), To: at(4)}}
	}
	if b[8]&8 != 0 {
		line.Path = append(line.Path, pieces.Line{From: line.Path.End(), To: line.Path.Start()})
		line.Closed = true
	}
	if binary.LittleEndian.Uint16(b)%5 == 0 {
		line.Pen.Dashes = []float64{3, 1}
	}
	return line
}
