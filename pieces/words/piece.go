// Package words says what is wrong with pieces in words for people, on paper and on the
// screen.
package words

import (
	"math"
	"strconv"

	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/role"
)

// Faulty says what is wrong with a piece, and what to do, without its name.
func Faulty(f pieces.Fault) language.Sentence {
	if say, known := faulty[f.Of]; known {
		return say(f)
	}
	return language.Name(string(f.Of))
}

// About names the piece that a fault is about.
func About(f pieces.Fault) language.Sentence {
	if f.Piece == "" {
		return language.Say("piece without a name", "Teil ohne Namen")
	}
	return role.Called(f.Piece)
}

// sentenceOf a fault of a piece.
type sentenceOf func(f pieces.Fault) language.Sentence

var faulty = map[pieces.Defect]sentenceOf{
	pieces.NoName: always("give it a name", "geben Sie ihm einen Namen"),
	pieces.NoEdges: always("it has no edges; draw its seam line",
		"es hat keine Kanten; zeichnen Sie seine Nahtlinie"),
	pieces.NoLine: ofEdge("edge %q has no usable line; give it a length",
		"die Kante %q hat keine brauchbare Linie; geben Sie ihr eine Länge"),
	pieces.Broken: func(f pieces.Fault) language.Sentence {
		return language.Say("edge %q is broken: part %d begins %s mm away from where part %d ends",
			"die Kante %q ist unterbrochen: Stück %d beginnt %s mm neben dem Ende von Stück %d",
			f.Edge, f.Number,
			figure(f.Length), f.Number-1)
	},
	pieces.NotChained: func(f pieces.Fault) language.Sentence {
		return language.Say("edge %q begins %s mm away from where edge %q ends; the edges must chain up to a closed "+
			"outline",
			"die Kante %q beginnt %s mm neben dem Ende der Kante %q; die Kanten müssen einen "+
				"geschlossenen Umriss bilden", f.Edge, figure(f.Length), f.Other)
	},
	pieces.EdgeUnnamed: ofNumber("edge %d has no name", "Kante %d hat keinen Namen"),
	pieces.EdgeNamedTwice: ofEdge("two edges are named %q; every edge needs a name of its own",
		"zwei Kanten heißen %q; jede braucht einen eigenen Namen"),
	pieces.Crossed: func(f pieces.Fault) language.Sentence {
		return language.Say("the outline crosses or touches itself near (%s, %s) mm, between edge %q and edge %q",
			"der Umriss kreuzt oder berührt sich nahe (%s, %s) mm, zwischen den Kanten %q und %q",
			figure(f.At[0]), figure(f.At[1]), f.Edge, f.Other)
	},
	pieces.Clockwise: always("the outline runs clockwise; list the edges counter-clockwise, or mirror the piece",
		"der Umriss läuft im Uhrzeigersinn; zählen Sie die Kanten gegen ihn auf, oder spiegeln "+
			"Sie das Teil"),
	pieces.NoArea: always("the outline encloses no area", "der Umriss umschließt keine Fläche"),
	pieces.NoGrain: always("it has no grainline; draw one with its upper end where the top of the piece is",
		"es hat keinen Fadenlauf; zeichnen Sie einen, mit dem oberen Ende, wo beim Teil oben ist"),
	pieces.UnknownGrain: always("its grain is neither straight, cross nor bias",
		"der Fadenlauf ist weder gerade, quer noch schräg"),

	pieces.AllowanceNoNumber: ofEdge("the seam allowance on %q is not a number",
		"die Nahtzugabe an %q ist keine Zahl"),
	pieces.AllowanceNegative: func(f pieces.Fault) language.Sentence {
		return language.Say("the seam allowance on %q is %s cm; it cannot be negative",
			"die Nahtzugabe an %q ist %s cm; sie kann nicht negativ sein", f.Edge, figure(f.Length/10))
	},
	pieces.IncludedNoWidth: ofEdge("the allowance that %q includes is no width of 0 or more",
		"die an %q enthaltene Nahtzugabe ist keine Breite von 0 oder mehr"),
	pieces.AccuracyNoLength: always("its accuracy is no length of 0 or more",
		"die Genauigkeit ist keine Länge von 0 oder mehr"),
	pieces.CutNone: ofNumber("the cut count is %d; it must be 1 or more",
		"zugeschnitten wird es %d-mal; es muss mindestens 1-mal sein"),
	pieces.PairUneven: ofNumber("the cut count is %d, but a pair needs an even one: one right and one left, or "+
		"several",
		"zugeschnitten wird es %d-mal, aber gegengleiche Teile brauchen eine gerade Zahl: ein "+
			"rechtes und ein linkes, oder mehrere"),
	pieces.NothingToCut: always("the edges enclose nothing, so there is nothing to cut",
		"die Kanten umschließen nichts, also ist nichts zuzuschneiden"),
	pieces.AllowanceAcrossFold: always("away from the fold, the seam allowances cross the fold line; make them "+
		"narrower there", "die Nahtzugaben reichen über die Bruchlinie; machen Sie sie dort schmaler"),
	pieces.NothingInside: ofEdge("the allowance that the edge %q includes leaves nothing of the piece beside it; "+
		"check how wide it is",
		"die an der Kante %q enthaltene Nahtzugabe lässt daneben nichts vom Teil übrig; prüfen "+
			"Sie, wie breit sie ist"),

	pieces.FoldNoEdge: ofEdge("the fold edge %q is not an edge of it",
		"die Bruchkante %q ist keine seiner Kanten"),
	pieces.FoldBent: ofEdge("the fold edge %q is not straight",
		"die Bruchkante %q ist nicht gerade"),
	pieces.FoldAllowance: ofEdge("the fold edge %q is not cut, so it has no seam allowance; set it to 0",
		"die Bruchkante %q wird nicht geschnitten, also hat sie keine Nahtzugabe; setzen Sie sie "+
			"auf 0"),
	pieces.AcrossFold: func(f pieces.Fault) language.Sentence {
		return language.Say("it reaches %s mm across its fold edge %q; a half must lie on one side of its fold",
			"es reicht %s mm über seine Bruchkante %q; eine Hälfte liegt auf einer Seite des Bruchs",
			figure(f.Length), f.Edge)
	},

	pieces.NotchNoEdge: ofEdge("a notch is on the edge %q, which it does not have",
		"ein Knips sitzt auf der Kante %q, und die hat es nicht"),
	pieces.NotchOffEdge: func(f pieces.Fault) language.Sentence {
		return language.Say("the notch at %s mm lies off the edge %q, which is %s mm long",
			"der Knips bei %s mm liegt neben der Kante %q, die %s mm lang ist", figure(f.Length), f.Edge,
			figure(f.Whole))
	},
	pieces.NotchNoStrokes: func(f pieces.Fault) language.Sentence {
		return language.Say("the notch at %s mm on the edge %q has %d strokes; it needs 1 or 2",
			"der Knips bei %s mm auf der Kante %q hat %d Striche; es müssen 1 oder 2 sein",
			figure(f.Length),
			f.Edge, f.Number)
	},
	pieces.MarkNowhere: func(f pieces.Fault) language.Sentence {
		return language.Say("the mark %q has no usable place", "das Zeichen %q hat keinen brauchbaren Platz", f.Mark)
	},
	pieces.DartFlat: ofDart("the dart %q has both its ends in one place",
		"der Abnäher %q hat beide Enden an einer Stelle"),
	pieces.DartOutside: func(f pieces.Fault) language.Sentence {
		return language.Say("the dart %q reaches outside the piece at (%s, %s) mm",
			"der Abnäher %q reicht bei (%s, %s) mm aus dem Teil hinaus", f.Dart, figure(f.At[0]),
			figure(f.At[1]))
	},
	pieces.DartNoMouth: func(f pieces.Fault) language.Sentence {
		return language.Say("the mouth of the dart %q is the edge %q, which it does not have",
			"der Abnäher %q öffnet sich an der Kante %q, und die hat es nicht", f.Dart, f.Edge)
	},
	pieces.DartLegsApart: func(f pieces.Fault) language.Sentence {
		return language.Say("the legs of the dart %q do not meet the ends of its mouth %q",
			"die Schenkel des Abnähers %q treffen die Enden seiner Öffnung %q nicht", f.Dart, f.Edge)
	},
	pieces.DartApexOnEdge: ofDart("the apex of the dart %q must lie inside the piece",
		"die Spitze des Abnähers %q muss im Teil liegen"),
}

// always the same sentence.
func always(english, german string) sentenceOf {
	return func(pieces.Fault) language.Sentence { return language.Say(english, german) }
}

// ofEdge is a sentence about an edge.
func ofEdge(english, german string) sentenceOf {
	return func(f pieces.Fault) language.Sentence { return language.Say(english, german, f.Edge) }
}

// ofNumber is a sentence with the number that is wrong.
func ofNumber(english, german string) sentenceOf {
	return func(f pieces.Fault) language.Sentence { return language.Say(english, german, f.Number) }
}

// ofDart is a sentence about a dart.
func ofDart(english, german string) sentenceOf {
	return func(f pieces.Fault) language.Sentence { return language.Say(english, german, f.Dart) }
}

// figure prints a number for people: to a thousandth, without idle zeros.
func figure(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}
