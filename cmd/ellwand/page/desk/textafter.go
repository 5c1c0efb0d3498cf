package desk

import (
	"bytes"
	"encoding/json"
	"errors"

	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
)

// SetTo a value what stands at a path, as an action.
func SetTo(path strict.Path, value edit.Value) Action {
	return Action{Set: &Setting{Path: Path(path), Value: Value{value}}}
}

// AppendTo a list, as an action.
func AppendTo(path strict.Path, value edit.Value) Action {
	return Action{Append: &Setting{Path: Path(path), Value: Value{value}}}
}

// UnsetAt a path what stands there, as an action.
func UnsetAt(path strict.Path) Action { return Action{Unset: &Place{Path(path)}} }

// TextAfter is the text of a job as it would be after values are set, added and removed;
// nothing is done to a job, and whether the text can be read is not looked at.
func TextAfter(text string, actions []Action) (string, error) {
	var err error
	for _, a := range actions {
		switch {
		case a.Set != nil:
			text, err = edit.Set(text, strict.Path(a.Set.Path), a.Set.Value.Value, Order)
		case a.Append != nil:
			path := strict.Path(a.Append.Path)
			text, err = edit.Set(text, path.Entry(edit.Len(text, path)), a.Append.Value.Value, Order)
		case a.Unset != nil:
			text, err = edit.Unset(text, strict.Path(a.Unset.Path))
		default:
			err = errors.New("only single values can be changed so")
		}
		if err != nil {
			return "", err
		}
	}
	return text, nil
}

// MarshalJSON writes keys and entries.
func (p Path) MarshalJSON() ([]byte, error) { return json.Marshal(Steps(strict.Path(p))) }

// MarshalJSON keeps the keys in their order.
func (v Value) MarshalJSON() ([]byte, error) {
	switch {
	case v.List != nil:
		all := make([]Value, len(v.List))
		for i, one := range v.List {
			all[i] = Value{one}
		}
		return json.Marshal(all)
	case v.Keys == nil:
		return json.Marshal(v.Text)
	}
	var out bytes.Buffer
	for i, pair := range v.Keys {
		out.WriteByte("{,"[min(i, 1)])
		key, err := json.Marshal(pair.Key)
		if err != nil {
			return nil, err
		}
		value, err := Value{pair.Value}.MarshalJSON()
		if err != nil {
			return nil, err
		}
		out.Write(append(append(key, ':'), value...))
	}
	if len(v.Keys) == 0 {
		out.WriteByte('{')
	}
	out.WriteByte('}')
	return out.Bytes(), nil
}
