package org.glintery.club;

import java.util.Locale;
import org.glintery.api.Preview;
import org.openide.util.NbBundle.Messages;

/** What is wrong with something that lies in a room. */
@Preview(since = "1.0")
@Messages({
    "Fault.TOO_LARGE=It is larger than a document may be and was not read.",
    "Fault.TOO_DEEP=It is nested deeper than a document may be and was not read further.",
    "Fault.TOO_MANY=It holds more fields than a document may and was not read further.",
    "Fault.UNFINISHED=It is no whole document. It may still be on its way, or be damaged.",
    "Fault.NOT_A_DOCUMENT=It is not written as documents of a club are.",
    "Fault.OTHER_CLUB=It belongs to another club.",
    "Fault.FOREIGN_SIGNED=It is signed by somebody who is not its owner, or is no member.",
    "Fault.FORGED=It was changed after it was signed, or the signature is made up.",
    "Fault.REPLAYED=It is an older version than the one known here. It may only be late, or somebody put it back.",
    "Fault.TWO_OF_ONE=Its owner wrote two different documents under one number; everybody takes the same one of them.",
    "Fault.RENAMED=It lies under a name that is not its own. It is read nevertheless.",
    "Fault.MISSING=It was here before and is gone. The copy kept here still counts.",
    "Fault.UNREADABLE=It can't be read.",
    "Fault.TOO_CROWDED=More lies in the room than is looked at; the rest was left alone."
})
public enum Fault {
    TOO_LARGE,
    TOO_DEEP,
    TOO_MANY,
    UNFINISHED,
    NOT_A_DOCUMENT,
    OTHER_CLUB,
    FOREIGN_SIGNED,
    FORGED,
    REPLAYED,
    TWO_OF_ONE,
    RENAMED,
    MISSING,
    UNREADABLE,
    TOO_CROWDED;

    /** The word for scripts. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What it means, in a sentence. */
    public String words() {
        return org.openide.util.NbBundle.getMessage(Fault.class, "Fault." + name());
    }
}
