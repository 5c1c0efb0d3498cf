// Package clients keeps the measurements of clients apart from jobs: in one file of the
// folder, each visit with its date. What was measured last stands for a client.
package clients

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"time"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// FileName is the file of the clients in a folder.
const FileName = "clients.yaml"

// Client with the measurements of each visit, by their keys in a job.
type Client struct {
	Name string `json:"name"`
	// Date of the last visit, and Body as it is since then.
	Date  string            `json:"date"`
	Units string            `json:"units"`
	Body  map[string]string `json:"body"`
	// Visits in the order of their dates.
	Visits []Visit `json:"visits"`
}

// Visit is what was measured on a day.
type Visit struct {
	Date string            `json:"date"`
	Body map[string]string `json:"body"`
}

// Read the clients of a folder, by their names; none where there is no file of them.
func Read(f *folder.Folder) ([]Client, error) {
	text, err := f.Read(FileName, limit.JobSize)
	if errors.Is(err, fs.ErrNotExist) {
		return []Client{}, nil
	}
	if err != nil {
		return nil, err
	}
	keys, _ := edit.Tree(string(text)).(map[string]any)
	list, is := keys["clients"].([]any)
	if !is {
		return nil, fmt.Errorf("%s cannot be read as it stands; it holds clients:, a list of names with their visits",
			FileName)
	}
	out := []Client{}
	for _, one := range list {
		entry, _ := one.(map[string]any)
		out = append(out, clientFrom(entry))
	}
	slices.SortStableFunc(out, func(a, b Client) int { return strings.Compare(a.Name, b.Name) })
	return out, nil
}

func clientFrom(entry map[string]any) Client {
	out := Client{Body: map[string]string{}, Visits: []Visit{}}
	out.Name, _ = entry["name"].(string)
	out.Units, _ = entry["units"].(string)
	visits, _ := entry["visits"].([]any)
	for _, one := range visits {
		v, _ := one.(map[string]any)
		visit := Visit{Body: map[string]string{}}
		visit.Date, _ = v["date"].(string)
		visit.Date, _, _ = strings.Cut(visit.Date, " ")
		body, _ := v["body"].(map[string]any)
		for key, value := range body {
			visit.Body[key], _ = value.(string)
		}
		out.Visits = append(out.Visits, visit)
	}
	slices.SortStableFunc(out.Visits, func(a, b Visit) int { return strings.Compare(a.Date, b.Date) })
	for _, visit := range out.Visits {
		maps.Copy(out.Body, visit.Body)
		out.Date = visit.Date
	}
	return out
}

// Note what was measured on a day, of a client who is added where she is not known.
func Note(f *folder.Folder, name, units string, visit Visit) error {
	if err := check(name, units, visit); err != nil {
		return err
	}
	data, err := f.Read(FileName, limit.JobSize)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	text := string(data)
	list := strict.Top("clients")
	at := indexOf(text, name)
	if at < 0 {
		at = edit.Len(text, list)
		entry := edit.Value{Keys: []edit.Pair{{Key: "name", Value: edit.Text(name)}, {Key: "units", Value: edit.Text(units)}}}
		if text, err = edit.Set(text, list.Entry(at), entry, nil); err != nil {
			return err
		}
	}
	client := list.Entry(at)
	if was, _ := edit.Get(text, client.Key("units")); was != "" && was != units {
		visit.Body = withUnit(visit.Body, units)
	}
	body := edit.Value{Keys: []edit.Pair{}}
	for _, key := range slices.Sorted(maps.Keys(visit.Body)) {
		body.Keys = append(body.Keys, edit.Pair{Key: key, Value: edit.Text(visit.Body[key])})
	}
	entry := edit.Value{Keys: []edit.Pair{{Key: "date", Value: edit.Text(visit.Date)}, {Key: "body", Value: body}}}
	visits := client.Key("visits")
	if text, err = edit.Set(text, visits.Entry(edit.Len(text, visits)), entry, nil); err != nil {
		return err
	}
	return f.Write(FileName, []byte(text))
}

// withUnit writes each number with its unit, where it has none.
func withUnit(body map[string]string, unit string) map[string]string {
	out := map[string]string{}
	for key, value := range body {
		if strings.TrimLeft(value, "0123456789.,/ ") == "" {
			value += " " + unit
		}
		out[key] = value
	}
	return out
}

func indexOf(text, name string) int {
	for i := range edit.Len(text, strict.Top("clients")) {
		if known, _ := edit.Get(text, strict.Top("clients").Entry(i).Key("name")); strings.EqualFold(known, name) {
			return i
		}
	}
	return -1
}

// check refuses what is no visit.
func check(name, units string, visit Visit) error {
	unit, err := measure.ParseUnit(units)
	switch {
	case strings.TrimSpace(name) == "":
		return language.Refuse("the client has no name", "die Kundin hat keinen Namen")
	case limit.Text.Check(language.Say("the name", "der Name"), len([]rune(name))) != nil:
		return limit.Text.Check(language.Say("the name", "der Name"), len([]rune(name)))
	case err != nil:
		return err
	case len(visit.Body) == 0:
		return language.Refuse("there is no measurement to note", "es gibt kein Maß zu notieren")
	}
	if _, err := time.Parse(time.DateOnly, visit.Date); err != nil {
		return fmt.Errorf("the date %q is none; write it as 2026-11-29", visit.Date)
	}
	known, _ := desk.MappingAt(strict.Top("body"))
	for key, value := range visit.Body {
		is := slices.ContainsFunc(known.Keys, func(k strict.Key) bool { return k.Name == key })
		if !is {
			return fmt.Errorf("there is no measurement called %s", key)
		}
		if mm, err := measure.Parse(value, unit); err != nil {
			return err
		} else if mm <= 0 {
			return fmt.Errorf("the %s is %s; it must be above 0", strings.ReplaceAll(key, "_", " "), value)
		}
	}
	return nil
}
