// Package words says what is wrong with pieces in words for people, on paper and on the
// screen.
package words

import (
	"fmt"
	"math"
	"strconv"

	"ellwand/pieces"
)

// Faulty says what is wrong with a piece, and what to do, without its name.
func Faulty(f pieces.Fault) string {
	if say, known := faulty[f.Of]; known {
		return say(f)
	}
	return string(f.Of)
}

// About names the piece that a fault is about.
func About(f pieces.Fault) string {
	if f.Piece == "" {
		return "piece without a name"
	}
	return f.Piece
}

// sentenceOf a fault of a piece.
type sentenceOf func(f pieces.Fault) string

var faulty = map[pieces.Defect]sentenceOf{
	pieces.NoName:  always("give it a name"),
	pieces.NoEdges: always("it has no edges; draw its seam line"),
	pieces.NoLine:  ofEdge("edge %q has no usable line; give it a length"),
	pieces.Broken: func(f pieces.Fault) string {
		return fmt.Sprintf("edge %q is broken: part %d begins %s mm away from where part %d ends", f.Edge, f.Number,
			figure(f.Length), f.Number-1)
	},
	pieces.NotChained: func(f pieces.Fault) string {
		return fmt.Sprintf("edge %q begins %s mm away from where edge %q ends; the edges must chain up to a closed "+
			"outline", f.Edge, figure(f.Length), f.Other)
	},
	pieces.EdgeUnnamed:    ofNumber("edge %d has no name"),
	pieces.EdgeNamedTwice: ofEdge("two edges are named %q; every edge needs a name of its own"),
	pieces.Crossed: func(f pieces.Fault) string {
		return fmt.Sprintf("the outline crosses or touches itself near (%s, %s) mm, between edge %q and edge %q",
			figure(f.At[0]), figure(f.At[1]), f.Edge, f.Other)
	},
	pieces.Clockwise:    always("the outline runs clockwise; list the edges counter-clockwise, or mirror the piece"),
	pieces.NoArea:       always("the outline encloses no area"),
	pieces.NoGrain:      always("it has no grainline; draw one with its upper end where the top of the piece is"),
	pieces.UnknownGrain: always("its grain is neither straight, cross nor bias"),

	pieces.AllowanceNoNumber: ofEdge("the seam allowance on %q is not a number"),
	pieces.AllowanceNegative: func(f pieces.Fault) string {
		return fmt.Sprintf("the seam allowance on %q is %s cm; it cannot be negative", f.Edge, figure(f.Length/10))
	},
	pieces.IncludedNoWidth:  ofEdge("the allowance that %q includes is no width of 0 or more"),
	pieces.AccuracyNoLength: always("its accuracy is no length of 0 or more"),
	pieces.CutNone:          ofNumber("the cut count is %d; it must be 1 or more"),
	pieces.PairUneven: ofNumber("the cut count is %d, but a pair needs an even one: one right and one left, or " +
		"several"),
	pieces.NothingToCut: always("the edges enclose nothing, so there is nothing to cut"),
	pieces.AllowanceAcrossFold: always("away from the fold, the seam allowances cross the fold line; make them " +
		"narrower there"),
	pieces.NothingInside: ofEdge("the allowance that the edge %q includes leaves nothing of the piece beside it; " +
		"check how wide it is"),

	pieces.FoldNoEdge:    ofEdge("the fold edge %q is not an edge of it"),
	pieces.FoldBent:      ofEdge("the fold edge %q is not straight"),
	pieces.FoldAllowance: ofEdge("the fold edge %q is not cut, so it has no seam allowance; set it to 0"),
	pieces.AcrossFold: func(f pieces.Fault) string {
		return fmt.Sprintf("it reaches %s mm across its fold edge %q; a half must lie on one side of its fold",
			figure(f.Length), f.Edge)
	},

	pieces.NotchNoEdge: ofEdge("a notch is on the edge %q, which it does not have"),
	pieces.NotchOffEdge: func(f pieces.Fault) string {
		return fmt.Sprintf("the notch at %s mm lies off the edge %q, which is %s mm long", figure(f.Length), f.Edge,
			figure(f.Whole))
	},
	pieces.NotchNoStrokes: func(f pieces.Fault) string {
		return fmt.Sprintf("the notch at %s mm on the edge %q has %d strokes; it needs 1 or 2", figure(f.Length),
			f.Edge, f.Number)
	},
	pieces.MarkNowhere: func(f pieces.Fault) string {
		return fmt.Sprintf("the mark %q has no usable place", f.Mark)
	},
	pieces.DartFlat: ofDart("the dart %q has both its ends in one place"),
	pieces.DartOutside: func(f pieces.Fault) string {
		return fmt.Sprintf("the dart %q reaches outside the piece at (%s, %s) mm", f.Dart, figure(f.At[0]),
			figure(f.At[1]))
	},
	pieces.DartNoMouth: func(f pieces.Fault) string {
		return fmt.Sprintf("the mouth of the dart %q is the edge %q, which it does not have", f.Dart, f.Edge)
	},
	pieces.DartLegsApart: func(f pieces.Fault) string {
		return fmt.Sprintf("the legs of the dart %q do not meet the ends of its mouth %q", f.Dart, f.Edge)
	},
	pieces.DartApexOnEdge: ofDart("the apex of the dart %q must lie inside the piece"),
}

// always the same sentence.
func always(text string) sentenceOf { return func(pieces.Fault) string { return text } }

// ofEdge is a sentence about an edge.
func ofEdge(format string) sentenceOf {
	return func(f pieces.Fault) string { return fmt.Sprintf(format, f.Edge) }
}

// ofNumber is a sentence with the number that is wrong.
func ofNumber(format string) sentenceOf {
	return func(f pieces.Fault) string { return fmt.Sprintf(format, f.Number) }
}

// ofDart is a sentence about a dart.
func ofDart(format string) sentenceOf {
	return func(f pieces.Fault) string { return fmt.Sprintf(format, f.Dart) }
}

// figure prints a number for people: to a thousandth, without idle zeros.
func figure(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}
