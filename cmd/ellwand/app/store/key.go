package store

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"reflect"
	"strconv"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
)

// Key of a problem: a digest of all that its answer depends on. What a cloth is called
// plays no part. Fields that are empty are left out, so that a field that a later
// version of the program adds, and a job does not use, changes no key.
func Key(c cloth.Cloth, all []pieces.Piece, more ...any) string {
	c.Name = ""
	digest := sha256.New()
	fmt.Fprintf(digest, "%d ", format)
	writeCanonical(digest, reflect.ValueOf(c))
	writeCanonical(digest, reflect.ValueOf(all))
	for _, what := range more {
		writeCanonical(digest, reflect.ValueOf(what))
	}
	return hex.EncodeToString(digest.Sum(nil))[:40]
}

// writeCanonical writes a value by the names of its fields; floats to the last digit;
// names that are values, such as those of seams, by their words, which outlive their
// numbers.
func writeCanonical(w io.Writer, v reflect.Value) {
	if name, ok := asName(v); ok {
		fmt.Fprint(w, strconv.Quote(name))
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		fmt.Fprint(w, "{")
		for i := range v.NumField() {
			if field := v.Field(i); !isEmpty(field) {
				fmt.Fprint(w, v.Type().Field(i).Name, ":")
				writeCanonical(w, field)
				fmt.Fprint(w, ";")
			}
		}
		fmt.Fprint(w, "}")
	case reflect.Slice, reflect.Array:
		fmt.Fprint(w, "[")
		for i := range v.Len() {
			writeCanonical(w, v.Index(i))
			fmt.Fprint(w, ",")
		}
		fmt.Fprint(w, "]")
	case reflect.Interface, reflect.Pointer:
		if !v.IsNil() {
			fmt.Fprint(w, v.Elem().Type().Name(), " ")
			writeCanonical(w, v.Elem())
		}
	case reflect.String:
		fmt.Fprint(w, strconv.Quote(v.String()))
	case reflect.Bool:
		fmt.Fprint(w, v.Bool())
	case reflect.Float32, reflect.Float64:
		fmt.Fprint(w, strconv.FormatFloat(v.Float(), 'g', -1, 64))
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		fmt.Fprint(w, v.Int())
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		fmt.Fprint(w, v.Uint())
	}
}

// asName gives the words of a value that shows nothing but them.
func asName(v reflect.Value) (string, bool) {
	if v.Kind() != reflect.Struct || !v.CanInterface() {
		return "", false
	}
	for i := range v.NumField() {
		if v.Type().Field(i).IsExported() {
			return "", false
		}
	}
	name, ok := v.Interface().(fmt.Stringer)
	if !ok {
		return "", false
	}
	return name.String(), true
}

func isEmpty(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Slice, reflect.Map:
		return v.Len() == 0
	case reflect.Func, reflect.Chan:
		return true
	}
	return v.IsZero()
}
