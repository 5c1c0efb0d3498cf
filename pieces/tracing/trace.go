// Package tracing turns a photo or a scan of paper pieces on a ground into outlines at
// true size, with what is known of their error.
//
// What is in the picture decides what can be vouched for: a squared ground, or sheets of
// a known size about the pieces, show its perspective and the bow of its lens; one sheet
// shows them near it; two distances fix a scale alone. Pieces are taken to lie flat in
// one plane with the reference.
package tracing

import (
	"errors"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
	"ellwand/pieces/tracing/reference"
	"ellwand/pieces/tracing/region"
)

// Tracing is what was found in a photo.
type Tracing struct {
	Width, Height int // of the photo, pixels
	// Step is how many pixels of the photo, each way, one place of Seen is wide.
	Step      int
	Reference reference.Found
	Outlines  []Outline
	// Left are the shapes that were left out, and why.
	Left  []*Fault
	photo *raster.Photo
}

// Is reports whether a file begins as a photo does.
func Is(data []byte) bool { return raster.Is(data) }

// Trace a photo, JPEG or PNG. The errors are of type *Fault.
func Trace(data []byte, known Known) (Tracing, error) {
	s, err := open(data)
	if err != nil {
		return Tracing{}, err
	}
	out := Tracing{Width: s.photo.Width, Height: s.photo.Height, Step: s.photo.Step(), photo: s.photo}
	blobs, found, err := s.refer(known)
	if err != nil {
		return out, err
	}
	out.Reference = found
	t := &tracer{scene: s, camera: found.Camera, reference: &out.Reference}
	if found.Kind == reference.Squares {
		t.lines = found.OnLines(s.grey, known.Square, lineMargin)
	}
	var rest region.Blob // the largest shape that is smaller than a piece
	for i, b := range blobs {
		if slices.Contains(found.Sheets, i) || s.surrounds(b) || !t.isPiece(b, leastArea) {
			if t.isPiece(b, leastTold) && !t.isPiece(b, leastArea) && b.Rim == 0 && b.Area > rest.Area {
				rest = b
			}
			continue
		}
		o, err := t.piece(b)
		var fault *Fault
		switch {
		case errors.As(err, &fault):
			out.Left = append(out.Left, fault)
		default:
			out.Outlines = append(out.Outlines, o)
		}
	}
	if rest.Area > 0 {
		out.Left = append(out.Left, s.fault(Small, rest))
	}
	switch {
	case len(out.Outlines) > 0:
		return out, nil
	case len(out.Left) > 0:
		return out, out.Left[0]
	}
	return out, plain(NoPiece)
}

// How pieces are told from other shapes [source.OwnChoice].
const (
	leastArea  = 600 // mm^2
	leastTold  = 150 // mm^2, of a smaller shape of which it is said that it is none
	lineMargin = 1.5 // pixels beside a line of the ground in which it draws the rim to it
	neckTaken  = 4   // small pixels taken from all sides of a piece to see whether it is two
	neckShares = 8   // of the area: what each of two must have
)

// isPiece says whether a shape is so large, mm^2, and lies on the squares where those are
// known.
func (t *tracer) isPiece(b region.Blob, least float64) bool {
	middle := b.Box.Min.Add(b.Box.Max).Div(2)
	at := orb.Point{raster.Grown(float64(middle.X), b.Step()), raster.Grown(float64(middle.Y), b.Step())}
	if t.reference.Kind == reference.Squares && !t.reference.Box.Contains(t.camera.ToPlane(at)) {
		return false
	}
	scale := t.camera.Scale(at) * float64(b.Step())
	return float64(b.Area)*scale*scale >= least && !math.IsInf(scale, 0)
}

func (t *tracer) piece(b region.Blob) (Outline, error) {
	if b.Rim > 0 {
		return Outline{}, t.fault(OverRim, b)
	}
	if _, two := b.Neck(neckTaken, b.Area/neckShares); two {
		return Outline{}, t.fault(Touching, b)
	}
	return t.outline(b)
}
