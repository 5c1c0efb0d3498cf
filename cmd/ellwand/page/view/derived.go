package view

import (
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/language"
)

// derived says what is used for a measurement that is not given, and why.
func derived(work *job.Work, path strict.Path, reader language.Language) (number, why string) {
	if work == nil || len(path) < 2 || path[len(path)-2].Key != "body" {
		return "", ""
	}
	name := draft.Measurement(strings.ReplaceAll(path[len(path)-1].Key, "_", " "))
	for _, made := range work.Garments {
		value, known := made.Body[name]
		if !known || !wears(work, made, path) {
			continue
		}
		if rule, is := made.Derived[name]; is {
			why = rule.Said(work.Unit).In(reader)
		}
		return numberOf(work, value), why
	}
	return "", ""
}

// wears says that a garment is made for the body at a path.
func wears(work *job.Work, made job.Made, path strict.Path) bool {
	if path[0].Key != "wearers" {
		return made.Wearer == ""
	}
	return path[1].Index < len(work.Wearers) && work.Wearers[path[1].Index] == made.Wearer
}

// numberOf a length as it is written in the job, without its unit.
func numberOf(work *job.Work, mm float64) string {
	text := work.Format(mm)
	return text[:max(0, strings.LastIndexByte(text, ' '))]
}
