package words

import (
	"fmt"

	"ellwand/pieces/outline"
)

// AtNode says what is wrong at a point of an outline, and what to do.
func AtNode(f *outline.Fault) string {
	if f.Of == outline.ControlsAmiss {
		return fmt.Sprintf("a Bezier curve has two control points, not %d", f.Number)
	}
	if text, known := atNode[f.Of]; known {
		return text
	}
	return f.Error()
}

var atNode = map[outline.Defect]string{
	outline.TooFewPoints: "an outline needs two points or more, three where none of its ways is curved",
	outline.NoCorner: "an outline of smooth points alone has no corner for an edge to begin at; make one a " +
		"corner",
	outline.TooFewOnLine:  "a line needs two points or more",
	outline.OnPointBefore: "it lies on the point before it; leave one of them out",
	outline.ArcAndCurve:   "its way is an arc and a Bezier curve at once; keep one of them",
}

// InReadings says what is wrong with readings of a tape, and what to do. Say prints a
// length.
func InReadings(f *outline.ReadingFault, say func(mm float64) string) string {
	if sentence, known := inReadings[f.Of]; known {
		return sentence(f, say)
	}
	return f.Error()
}

type sentenceOfReadings func(f *outline.ReadingFault, say func(mm float64) string) string

var inReadings = map[outline.Defect]sentenceOfReadings{
	outline.TooFewReadings: ofReadings("a side needs two readings or more: at its lower corner and at its upper one"),
	outline.NoSteps: ofReadings("it is not said how far apart the readings are; add every: 5, or at: with the " +
		"places"),
	outline.StepsAndPlaces: ofReadings("it has both every and at; keep one of them"),
	outline.PlacesAmiss: func(f *outline.ReadingFault, _ func(float64) string) string {
		return fmt.Sprintf("there are %d places under at, and %d readings; there is one at each", f.Number, f.Readings)
	},
	outline.TooManySteps: func(f *outline.ReadingFault, say func(float64) string) string {
		return fmt.Sprintf("a length of %s has more than %d steps of %s; look at both", say(f.Length),
			outline.MostSteps, say(f.Every))
	},
	outline.AcrossNoSteps: ofReadings("readings across need every: with how far apart they are"),
	outline.AcrossAmiss: func(f *outline.ReadingFault, say func(float64) string) string {
		return fmt.Sprintf("out to the corner, %s across, there are %d readings (%s), but it has %d", say(f.High),
			len(f.Places), listed(f.Places, say), f.Readings)
	},
	outline.UpsideDown: func(f *outline.ReadingFault, say func(float64) string) string {
		return fmt.Sprintf("its upper corner lies at %s and its lower one at %s along the line; look at top and "+
			"bottom", say(f.High), say(f.Low))
	},
	outline.SideAmiss: func(f *outline.ReadingFault, say func(float64) string) string {
		return fmt.Sprintf("from the lower corner, at %s, to the upper, at %s, there are %d readings (%s), but it "+
			"has %d", say(f.Low), say(f.High), len(f.Places), listed(f.Places, say), f.Readings)
	},
	outline.PlacesBackwards: func(f *outline.ReadingFault, say func(float64) string) string {
		return "the places of the readings must grow from the lower corner to the upper: " + listed(f.Places, say)
	},
}

// ofReadings is the same sentence of all readings.
func ofReadings(text string) sentenceOfReadings {
	return func(*outline.ReadingFault, func(float64) string) string { return text }
}

// listed names places: "at 0, 5, ... 60 and 61.5".
func listed(places []float64, say func(float64) string) string {
	n := len(places)
	if n > 4 {
		return fmt.Sprintf("at %s, %s, ... %s and %s", say(places[0]), say(places[1]), say(places[n-2]),
			say(places[n-1]))
	}
	text := "at " + say(places[0])
	for i, at := range places[1:] {
		link := ", "
		if i == n-2 {
			link = " and "
		}
		text += link + say(at)
	}
	return text
}
