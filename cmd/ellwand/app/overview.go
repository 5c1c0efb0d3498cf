package app

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
)

// The overview is an A4 sheet across [source.OwnChoice].
const (
	overviewWidth  = 297.0
	overviewHeight = 210.0
	overviewMargin = 10.0
	keyWidth       = 84.0 // room for the list of kinds
	keyStep        = 7.0
	mostKeys       = 25
)

// Overall draws the whole drawing, the kinds of its lines with their numbers, and the
// sheets as they were joined.
func (i Imported) Overall() drawing.Page {
	page := drawing.Page{Width: overviewWidth, Height: overviewHeight}
	view := i.Overview
	box := boundOf(view)
	room := orb.Bound{Min: orb.Point{overviewMargin, overviewMargin + 10},
		Max: orb.Point{overviewWidth - keyWidth - overviewMargin, overviewHeight - overviewMargin}}
	scale := math.Max((box.Max[0]-box.Min[0])/(room.Max[0]-room.Min[0]), (box.Max[1]-box.Min[1])/(room.Max[1]-room.Min[1]))
	scale = math.Max(scale, 0.01)
	to := func(p orb.Point) orb.Point {
		return orb.Point{room.Min[0] + (p[0]-box.Min[0])/scale, room.Min[1] + (box.Max[1]-p[1])/scale}
	}
	page.Write(drawing.Text{Words: i.Title + ": the whole drawing", At: orb.Point{overviewMargin, overviewMargin + 4},
		Points: 12, Bold: true})
	for _, s := range view.Sheets {
		corner := to(orb.Point{s.Box.Min[0], s.Box.Max[1]})
		page.Frame(drawing.Pen{Width: 0.15, Grey: 170}, geometry.Box(to(s.Box.Center()), orb.Point{
			(s.Box.Max[0] - s.Box.Min[0]) / scale / 2, (s.Box.Max[1] - s.Box.Min[1]) / scale / 2}))
		page.Write(drawing.Text{Words: fmt.Sprintf("page %d", s.Page), At: geometry.Add(corner, orb.Point{1.5, 4}),
			Points: 7, Grey: 140})
	}
	for n := len(view.Kinds) - 1; n >= 0; n-- { // the most important last, over the others
		k := view.Kinds[n]
		for _, path := range k.Lines {
			var line []orb.Point
			for _, p := range path.Flatten(0.2 * scale) {
				line = append(line, to(p))
			}
			page.Line(penOf(k), line...)
		}
	}
	numberKinds(&page.Picture, view.Kinds, to)
	drawKey(&page.Picture, view.Kinds)
	return page
}

func boundOf(view *found.Overview) orb.Bound {
	points := orb.MultiPoint{}
	for _, k := range view.Kinds {
		for _, path := range k.Lines {
			points = append(points, orb.MultiPoint(path.Flatten(1))...)
		}
	}
	for _, s := range view.Sheets {
		points = append(points, s.Box.Min, s.Box.Max)
	}
	if len(points) == 0 {
		return orb.Bound{Max: orb.Point{1, 1}}
	}
	return points.Bound()
}

// penOf a kind: its own dashes, black where it is chosen.
func penOf(k found.LineKind) drawing.Pen {
	pen := drawing.Pen{Width: 0.2, Grey: 150}
	if k.Chosen {
		pen.Width, pen.Grey = 0.4, 0
	}
	for _, d := range k.Dashes {
		pen.Dashes = append(pen.Dashes, math.Max(0.3, d/3))
	}
	return pen
}

// numberKinds writes the number of each kind on its longest lines, on white.
func numberKinds(on *drawing.Picture, kinds []found.LineKind, to func(orb.Point) orb.Point) {
	for _, k := range kinds[:min(len(kinds), mostKeys)] {
		longest := k.Lines[0]
		for _, path := range k.Lines {
			if path.Length() > longest.Length() {
				longest = path
			}
		}
		words := fmt.Sprint(k.Number)
		// Lines that run beside each other are numbered at different places.
		at := to(longest.At(longest.Length() * (0.15 + 0.7*math.Mod(float64(k.Number)*0.381966, 1))))
		half := drawing.Width(words, 8, true)/2 + 0.7
		on.Box(255, geometry.Box(at, orb.Point{half, 1.9}))
		on.Write(drawing.Text{Words: words, At: orb.Point{at[0], at[1] + 1}, Points: 8, Bold: true, Align: drawing.Centre})
	}
}

// drawKey lists the kinds.
func drawKey(on *drawing.Picture, kinds []found.LineKind) {
	x, y := overviewWidth-keyWidth, overviewMargin+4
	on.Write(drawing.Text{Words: "lines, by --lines", At: orb.Point{x, y}, Points: 10, Bold: true})
	for i, k := range kinds {
		y += keyStep
		if i == mostKeys {
			on.Write(drawing.Text{Words: fmt.Sprintf("and %d more", len(kinds)-i), At: orb.Point{x, y}, Points: 8})
			return
		}
		on.Write(drawing.Text{Words: fmt.Sprint(k.Number), At: orb.Point{x + 5, y},
			Points: 9, Bold: true, Align: drawing.Right})
		on.Curve(penOf(k), pieces.Path{pieces.Line{From: orb.Point{x + 7, y - 1}, To: orb.Point{x + 23, y - 1}}})
		on.Write(drawing.Text{Words: aboutKind(k), At: orb.Point{x + 25, y}, Points: 8})
	}
}

// aboutKind tells a kind of lines by what is seen of it.
func aboutKind(k found.LineKind) string {
	words := k.Colour
	if words == "" {
		words = "filled"
	}
	if words == "#000000" {
		words = "black"
	}
	if k.Layer != "" {
		words = k.Layer + ", " + words
	}
	return fmt.Sprintf("%s, %.2g mm; %.1f m of it", words, k.Width, k.Length()/1000)
}
