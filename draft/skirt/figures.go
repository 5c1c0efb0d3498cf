package skirt

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// Block is a skirt as drafted.
type Block struct {
	Pieces []pieces.Piece
	Sheets []construct.Sheet
	// Waist is the length of the waist seam all round as it is worn: darts
	// closed, pleats folded, gathers drawn in. WaistEase is what it has over
	// the waist girth.
	Waist, WaistEase float64
	// Hip is the width all round on the hip line, Hem that round the hem.
	Hip, Hem float64
	// Pairings are the lengths that must agree.
	Pairings []construct.Pairing
	Warnings []construct.Sentence
}

// UsualLength of a skirt from the natural waist, in mm ([source.CommonPractice]: to
// about the knee).
const UsualLength = 600

// The usual eases and panel, in mm [source.CommonPractice].
const (
	usualWaistEase = 15 // 1 to 2 cm
	usualHipEase   = 40 // 3 to 5 cm
	usualPanel     = 1000
)

// figures are the lengths that every shape is drawn from.
type figures struct {
	Measures
	Options
	// waist and hip are the whole girths with their ease.
	waist, hip float64
}

func reckon(m Measures, o Options) figures {
	f := figures{Measures: m, Options: o}
	for _, usual := range []struct {
		asked *float64
		value float64
	}{{&f.Length, UsualLength}, {&f.WaistEase, usualWaistEase}, {&f.HipEase, usualHipEase}} {
		if *usual.asked == 0 {
			*usual.asked = usual.value
		}
	}
	f.waist, f.hip = m.Waist+f.WaistEase, m.Hip+f.HipEase
	return f
}

// leastBelowHip is the least length of a skirt below the hip line, longest the
// longest skirt, leastPanel the narrowest panel, in mm [source.OwnChoice].
const (
	leastBelowHip = 60
	longest       = 1600
	leastPanel    = 200
)

func (f figures) check() error {
	for _, l := range []struct {
		name  string
		value float64
	}{{"length", f.Length}, {"waist ease", f.WaistEase}, {"hip ease", f.HipEase}, {"flare", f.Flare},
		{"panel width", f.PanelWidth}} {
		if l.value < 0 {
			return construct.Refuse("skirt: the %s is %s; it cannot be negative",
				"Rock: %s ist %s; das kann nicht negativ sein", l.name, construct.Length(l.value))
		}
	}
	switch {
	case f.Length < f.WaistToHip+leastBelowHip:
		return construct.About(subject.Length).Refuse("skirt: a length of %s ends above or at the hip (waist to hip "+
			"%s); ask for %s or more",
			"Rock: eine Länge von %s endet über oder an der Hüfte (Hüfttiefe %s); verlangen Sie %s "+
				"oder mehr",
			construct.Length(f.Length+f.Lowered), construct.Length(f.WaistToHip+f.Lowered),
			construct.AtLeast(f.WaistToHip+leastBelowHip+f.Lowered))
	case f.Length > longest:
		return construct.About(subject.Length).Refuse("skirt: a length of %s is longer than a body; %s is the most",
			"Rock: eine Länge von %s ist länger als ein Körper; höchstens %s gehen",
			construct.Length(f.Length+f.Lowered), construct.AtMost(longest+f.Lowered))
	case f.PanelWidth > 0 && f.PanelWidth < leastPanel:
		return construct.About(subject.PanelWidth).Refuse("skirt: a panel width of %s is too narrow; ask for %s or more",
			"Rock: eine Bahnbreite von %s ist zu schmal; verlangen Sie %s oder mehr",
			construct.Length(f.PanelWidth), construct.AtLeast(leastPanel))
	case f.Vent && f.Shape != Straight:
		return construct.About(subject.Vent).Refuse("skirt: only a straight skirt has a vent; leave it out, or ask "+
			"for the straight shape",
			"Rock: nur ein gerader Rock hat einen Schlitz; lassen Sie ihn weg, oder verlangen Sie die "+
				"gerade Form")
	case f.DartsIntoHem && f.Shape != ALine:
		return construct.About(subject.Darts).Refuse("skirt: only in an a-line skirt are the darts closed into the "+
			"hem; leave that out, or ask for the a-line shape",
			"Rock: nur in der A-Linie werden die Abnäher in den Saum gelegt; lassen Sie das weg, oder "+
				"verlangen Sie die A-Linie")
	case f.Vent && f.BackOnFold:
		return construct.About(subject.Vent, subject.Back).Refuse(
			"skirt: a vent needs a centre back seam; leave out one of the vent and the back on the fold",
			"Rock: ein Schlitz braucht eine Naht in der hinteren Mitte; lassen Sie den Schlitz weg, "+
				"oder den Bruch hinten")
	}
	return nil
}

// usualFlare is how far a side seam runs out for every mm below the hip: 4 cm on
// 36 [source.OwnChoice].
const usualFlare = 1. / 9

// flare is how far a side seam runs out below the hip.
func (f figures) flare() float64 {
	if f.Flare > 0 {
		return f.Flare
	}
	if f.DartsIntoHem {
		return 0
	}
	return usualFlare * (f.Length - f.WaistToHip)
}

// mostSlant is how far a flaring side seam may run out for every mm that it
// runs down: about 22 degrees [source.OwnChoice].
const mostSlant = 0.4

func (f figures) checkFlare() error {
	if most := mostSlant * (f.Length - f.WaistToHip); f.flare() > most {
		return construct.About(subject.Flare).Refuse("skirt: a flare of %s is too much for a length of %s; ask for %s "+
			"or less, or for a circle skirt",
			"Rock: eine Ausstellung von %s ist zu viel für eine Länge von %s; verlangen Sie %s oder "+
				"weniger, oder einen Tellerrock",
			construct.Length(f.flare()), construct.Length(f.Length), construct.AtMost(most))
	}
	return nil
}

// upright is a straight grainline at a distance from the centre line, between
// two heights.
func upright(x, low, high float64) pieces.Grain {
	rise := high - low
	return pieces.Grain{From: orb.Point{x, low + float64(0.2*rise)}, To: orb.Point{x, low + float64(0.8*rise)}}
}

// zipLength is how far an opening reaches down from the waist: to 1 cm above
// the hip line [source.CommonPractice].
func zipLength(waistToHip float64) float64 { return waistToHip - 10 }

// whole is how often a length goes into another, rounded up.
func whole(length, into float64) int {
	n := 1
	for float64(n)*into < length-1e-6 {
		n++
	}
	return n
}

// slant of the side seam below the hip: across for every mm down.
func (f figures) slant() float64 {
	if f.Shape == Straight {
		return 0
	}
	return f.flare() / (f.Length - f.WaistToHip)
}
