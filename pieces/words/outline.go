package words

import (
	"ellwand/pieces/language"
	"ellwand/pieces/outline"
)

// AtNode says what is wrong at a point of an outline, and what to do.
func AtNode(f *outline.Fault) language.Sentence {
	if f.Of == outline.ControlsAmiss {
		return language.Say("a Bezier curve has two control points, not %d",
			"eine Bezierkurve hat zwei Kontrollpunkte, nicht %d", f.Number)
	}
	if text, known := atNode[f.Of]; known {
		return text
	}
	return language.Name(f.Error())
}

var atNode = map[outline.Defect]language.Sentence{
	outline.TooFewPoints: language.Say("an outline needs two points or more, three where none of its ways is curved",
		"ein Umriss braucht mindestens zwei Punkte, drei, wo nichts daran gebogen ist"),
	outline.NoCorner: language.Say("an outline of smooth points alone has no corner for an edge to begin at; make one a "+
		"corner", "ein Umriss nur aus Bogenpunkten hat keine Ecke, an der eine Kante beginnen könnte; machen Sie einen "+
		"zur Ecke"),
	outline.TooFewOnLine: language.Say("a line needs two points or more",
		"eine Linie braucht mindestens zwei Punkte"),
	outline.OnPointBefore: language.Say("it lies on the point before it; leave one of them out",
		"er liegt auf dem Punkt davor; lassen Sie einen davon weg"),
	outline.ArcAndCurve: language.Say("its way is an arc and a Bezier curve at once; keep one of them",
		"hier ist ein Bogen und zugleich eine Bezierkurve; behalten Sie eines davon"),
}

// InReadings says what is wrong with readings of a tape, and what to do. Say prints a
// length.
func InReadings(f *outline.ReadingFault, say func(mm float64) string) language.Sentence {
	if sentence, known := inReadings[f.Of]; known {
		return sentence(f, say)
	}
	return language.Name(f.Error())
}

type sentenceOfReadings func(f *outline.ReadingFault, say func(mm float64) string) language.Sentence

var inReadings = map[outline.Defect]sentenceOfReadings{
	outline.TooFewReadings: ofReadings("a side needs two readings or more: at its lower corner and at its upper one",
		"eine Seite braucht mindestens zwei Ablesungen: an der unteren und an der oberen Ecke"),
	outline.NoSteps: ofReadings("it is not said how far apart the readings are; add every: 5, or at: with the "+
		"places",
		"es fehlt, wie weit die Ablesungen auseinander liegen; geben Sie an, alle wie viel, etwa "+
			"5, oder an welchen Stellen"),
	outline.StepsAndPlaces: ofReadings("it has both every and at; keep one of them",
		"es ist gesagt, alle wie viel, und dazu an welchen Stellen; behalten Sie eines davon"),
	outline.PlacesAmiss: func(f *outline.ReadingFault, _ func(float64) string) language.Sentence {
		return language.Say("there are %d places under at, and %d readings; there is one at each",
			"es sind %d Stellen und %d Ablesungen; an jeder Stelle ist eine", f.Number, f.Readings)
	},
	outline.TooManySteps: func(f *outline.ReadingFault, say func(float64) string) language.Sentence {
		return language.Say("a length of %s has more than %d steps of %s; look at both",
			"eine Länge von %s hat mehr als %d Schritte von %s; prüfen Sie beides", say(f.Length),
			outline.MostSteps, say(f.Every))
	},
	outline.AcrossNoSteps: ofReadings("readings across need every: with how far apart they are",
		"quer Abgelesenes braucht die Angabe, alle wie viel"),
	outline.AcrossAmiss: func(f *outline.ReadingFault, say func(float64) string) language.Sentence {
		return language.Say("out to the corner, %s across, there are %d readings (%s), but it has %d",
			"bis zur Ecke, %s quer, sind es %d Ablesungen (%s), angegeben sind %d", say(f.High),
			len(f.Places), listed(f.Places, say), f.Readings)
	},
	outline.UpsideDown: func(f *outline.ReadingFault, say func(float64) string) language.Sentence {
		return language.Say("its upper corner lies at %s and its lower one at %s along the line; look at top and "+
			"bottom",
			"die obere Ecke liegt bei %s und die untere bei %s auf der Linie; prüfen Sie oben und unten",
			say(f.High), say(f.Low))
	},
	outline.SideAmiss: func(f *outline.ReadingFault, say func(float64) string) language.Sentence {
		return language.Say("from the lower corner, at %s, to the upper, at %s, there are %d readings (%s), but it "+
			"has %d",
			"von der unteren Ecke, bei %s, bis zur oberen, bei %s, sind es %d Ablesungen (%s), "+
				"angegeben sind %d", say(f.Low), say(f.High), len(f.Places), listed(f.Places, say), f.Readings)
	},
	outline.PlacesBackwards: func(f *outline.ReadingFault, say func(float64) string) language.Sentence {
		return language.Say("the places of the readings must grow from the lower corner to the upper: %s",
			"die Stellen der Ablesungen müssen von der unteren Ecke zur oberen wachsen: %s", listed(f.Places, say))
	},
}

// ofReadings is the same sentence of all readings.
func ofReadings(english, german string) sentenceOfReadings {
	return func(*outline.ReadingFault, func(float64) string) language.Sentence {
		return language.Say(english, german)
	}
}

// listed names places: "at 0, 5, ... 60 and 61.5".
func listed(places []float64, say func(float64) string) language.Sentence {
	n := len(places)
	if n > 4 {
		return language.Say("at %s, %s, ... %s and %s", "bei %s, %s, … %s und %s", say(places[0]), say(places[1]),
			say(places[n-2]), say(places[n-1]))
	}
	all := make([]language.Sentence, n)
	for i, at := range places {
		all[i] = language.Name(say(at))
	}
	return language.Say("at %s", "bei %s", language.List(all...))
}
